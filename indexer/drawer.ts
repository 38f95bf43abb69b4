import { drawPage } from './intake/pdf/draw-page.ts';
import { readInput } from './read-input.ts';

/**
 * One page: on standard input a line of JSON, {@link DrawRequest}, then the document's bytes; on standard output a
 * line of JSON, {@link DrawAnswer}, then the pictures' bytes one after another. Like the reader it has no database, no
 * network and no environment; whoever starts it watches its time and memory and ends it.
 */
export interface DrawRequest {
  /** 1-based. */
  page: number;
}

export interface DrawAnswer {
  /** The largest first; `bytes` is how many of what follows are its own. */
  pictures: { width: number; height: number; bytes: number }[];
}

const { request, bytes } = await readInput<DrawRequest>();
const pictures = await drawPage(bytes, request.page);
const answer: DrawAnswer = {
  pictures: pictures.map(({ width, height, bytes }) => ({ width, height, bytes: bytes.byteLength })),
};
process.stdout.write(`${JSON.stringify(answer)}\n`);
for (const picture of pictures) process.stdout.write(picture.bytes);
