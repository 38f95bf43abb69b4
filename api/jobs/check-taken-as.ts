import { itemOf, stillOpen } from '../ordering/taken-as.ts';
import { refuse } from '../refusal.ts';
import { itemNamed } from './item-named.ts';

/**
 * The item that a need may be taken as: its own, or one that states more of it and contradicts nothing. A part without a
 * size may have a successor with one; pooling looks whether the word fits what is ordered.
 */
export function checkTakenAs(item: string | null, takenAs: string): string {
  const name = itemNamed(takenAs);
  if (item === null || stillOpen(itemOf(item), itemOf(name)) !== null) return name;
  throw refuse('bad-request', {
    place: 'takenAs',
    message: `"${item}" cannot be taken as "${name}".`,
    remedy:
      'Give an item of the same size that states more of it, and nothing that its own line states otherwise.',
  });
}
