import type { Readable, Writable } from 'node:stream';
import { fit } from '../../indexer/fit.ts';
import { fitRequest } from '../answers/measure.ts';
import { answerLines } from './json-lines.ts';

/** Says which bearings sit on measured seats, one JSON object a line in and out. */
export function fitLines(input: Readable, output: Writable, errors: Writable): Promise<number> {
  return answerLines(fitRequest, fit, input, output, errors);
}
