import type { SizeHit } from '../../api/answers/index.ts';

/** How many parts and models here take a size, and what it is called. */
export function whereWords({ parts, models, designations }: SizeHit): string {
  const here =
    parts === 0
      ? 'not on this bench'
      : `${parts} ${parts === 1 ? 'part' : 'parts'} in ${models} ${models === 1 ? 'model' : 'models'}`;
  return [here, ...designations].join(', ');
}
