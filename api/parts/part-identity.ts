import { foldNumber } from '../../indexer/index.ts';

/** What of a line says which part it names. */
export interface Named {
  ref: string;
  partNumber: string;
  description: string;
}

/**
 * Which part of its maker a line names: by its number, letters and digits alone; without one it is the line of its
 * model, by reference and words. The two kinds never meet, for a folded number holds no `~`.
 */
export function partIdentity(model: string, line: Named): { number: string | null; numberKey: string } {
  const folded = foldNumber(line.partNumber);
  if (folded !== '') return { number: line.partNumber, numberKey: folded.slice(0, 200) };
  const words = line.description.toLowerCase().replace(/\s+/g, ' ').trim().slice(0, 200);
  return { number: null, numberKey: `~${model}~${line.ref.slice(0, 40)}~${words}` };
}
