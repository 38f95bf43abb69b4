import type { JobAnswer } from '../../api/answers/index.ts';

/** How a job is called in a list: its number and its machine, or whose it is. */
export function jobName({ number, model, owner }: Pick<JobAnswer, 'number' | 'model' | 'owner'>): string {
  return `${number} ${model ? `${model.maker.name} ${model.name}` : owner}`;
}
