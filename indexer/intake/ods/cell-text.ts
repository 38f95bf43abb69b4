import type { Attributes } from '../markup.ts';

/** The longest text of a cell, in characters. */
const longestText = 65_536;
/** Drawings and notes that hang on a cell: none of it is the cell's own text. */
const asides = new Set(['annotation', 'shapes', 'frame', 'custom-shape', 'forms', 'object', 'ruby-text']);

/** The text of a cell as it is shown (OpenDocument 1.3 part 3, 5.1 and 6.1): paragraphs are parted by line breaks. */
export class CellText {
  private text = '';
  private paragraphs = 0;
  private within = 0;
  private aside = 0;

  open(name: string, attributes: Attributes): void {
    if (asides.has(name)) this.aside += 1;
    if (this.aside > 0) return;
    if (name === 'p' || name === 'h') {
      if (this.paragraphs > 0) this.text += '\n';
      this.paragraphs += 1;
      this.within += 1;
    } else if (name === 's') this.add(' '.repeat(Math.min(Number(attributes['text:c'] ?? 1) || 1, 100)));
    else if (name === 'tab') this.add(' ');
    else if (name === 'line-break') this.add('\n');
  }

  close(name: string): void {
    if (asides.has(name)) this.aside -= 1;
    else if (this.aside === 0 && (name === 'p' || name === 'h')) this.within -= 1;
  }

  add(text: string): void {
    if (this.within > 0 && this.aside === 0 && this.text.length <= longestText) this.text += text;
  }

  /** What was collected since the last time. */
  take(): string {
    const { text } = this;
    this.text = '';
    this.paragraphs = 0;
    this.within = 0;
    return text;
  }
}
