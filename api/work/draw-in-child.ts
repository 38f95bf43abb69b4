import type { DrawAnswer, DrawRequest } from '../../indexer/drawer.ts';
import { besideProgram, ChildEnded, WatchedChild } from './watched-child.ts';

/** A page as a picture, WebP. */
export interface Picture {
  /** In pixels. */
  width: number;
  height: number;
  bytes: Buffer;
}

const mebibyte = 1024 * 1024;

/** What one page may cost; a page that costs more is not drawn. */
const limits = { time: 60_000, memory: 512 * mebibyte, output: 64 * mebibyte };

/** Draws a page, 1-based, at several scales, the largest first. */
export type DrawPage = (bytes: Uint8Array, page: number, signal?: AbortSignal) => Promise<Picture[]>;

/**
 * Draws a page in a child process that has nothing but the document's bytes.
 * @throws {ChildEnded} when it costs too much, or can't be drawn
 */
export const drawInChild: DrawPage = async (bytes, page, signal) => {
  const request: DrawRequest = { page };
  const chunks: Buffer[] = [];
  const child = new WatchedChild({ program: besideProgram('drawer.js'), request, bytes, limits, signal });
  for await (const chunk of child.output()) chunks.push(chunk);
  const all = Buffer.concat(chunks);
  const head = all.indexOf(10);
  if (head < 0) throw new ChildEnded('died', 'ended without an answer');
  const { pictures } = JSON.parse(all.toString('utf8', 0, head)) as DrawAnswer;
  let at = head + 1;
  return pictures.map(({ width, height, bytes: count }) => {
    const picture = { width, height, bytes: all.subarray(at, at + count) };
    at += count;
    return picture;
  });
};
