/**
 * The front door of the trade's knowledge: pure, without network, files or database, so that a browser can load it.
 * Documents come in by `intake/` and `worker.ts`, which a page never loads.
 */
export { type Duty, duties, isCritical } from './duty.ts';
export {
  type Alternative,
  type Attrs,
  type CategoryName,
  categoryNames,
  type Dims,
  type LineContext,
  type ReadAs,
  type Reading,
  type Span,
} from './reading/reading.ts';
