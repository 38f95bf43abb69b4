import { Unreadable } from '../unreadable.ts';

/** Elements that begin a line of their own. */
export const blocks = new Set(
  `address article aside blockquote body caption center dd details div dl dt fieldset figcaption figure footer form h1 h2 h3 h4
   h5 h6 header hr li main nav ol p pre section summary table tbody td tfoot th thead tr ul`.split(/\s+/),
);

const tooLarge = (): Unreadable =>
  new Unreadable('too-large', {
    place: 'the page',
    message: 'The page has no table and more text than any parts list.',
    remedy: 'Copy the list alone and paste it as text.',
  });

/** How much of a page is kept: a list that stands outside of tables is short. */
const longestText = 4_000_000;
const mostPieces = 400_000;

/** The text of a page as lines, blanks kept in `pre`, elsewhere run together as a browser does. */
export class PageText {
  private readonly pieces: string[] = [];
  private length = 0;
  private pre = 0;

  open(name: string): void {
    if (name === 'pre') this.pre += 1;
    if (name === 'br' || blocks.has(name)) this.push('\n');
    if (name === 'td' || name === 'th') this.push('\t');
  }

  close(name: string): void {
    if (name === 'pre') this.pre -= 1;
    if (blocks.has(name)) this.push('\n');
  }

  add(text: string): void {
    this.push(this.pre > 0 ? text : text.replace(/[ \t\r\n\f]+/g, ' '));
  }

  private push(piece: string): void {
    this.length += piece.length;
    if (this.length <= longestText && this.pieces.length < mostPieces) this.pieces.push(piece);
  }

  /** @throws {Unreadable} `too-large` where the page holds more than is kept */
  toString(): string {
    if (this.length > longestText || this.pieces.length === mostPieces) throw tooLarge();
    return this.pieces.join('');
  }
}
