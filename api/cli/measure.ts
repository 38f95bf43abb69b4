import type { Readable, Writable } from 'node:stream';
import { measure } from '../../indexer/measure.ts';
import { measureRequest } from '../answers/measure.ts';
import { answerLines } from './json-lines.ts';

/** Names parts from measurements, one JSON object a line in and out. A workshop's own sizes come in the line as `known`. */
export function measureLines(input: Readable, output: Writable, errors: Writable): Promise<number> {
  return answerLines(measureRequest, measure, input, output, errors);
}
