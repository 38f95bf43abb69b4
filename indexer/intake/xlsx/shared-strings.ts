import { readXmlMember } from '../markup.ts';
import type { Zip } from '../zip.ts';

/** The longest text of a cell, in characters: what a spreadsheet itself allows is half of it. */
export const longestText = 65_536;

/** Collects what `t` elements hold, runs of letters joined, the reading of Japanese words (`rPh`) left out. */
export class RichText {
  private text = '';
  private open = false;
  private aside = 0;

  enter(name: string): void {
    if (name === 'rPh') this.aside += 1;
    else if (name === 't') this.open = this.aside === 0;
  }

  leave(name: string): void {
    if (name === 'rPh') this.aside -= 1;
    else if (name === 't') this.open = false;
  }

  add(text: string): void {
    if (this.open && this.text.length <= longestText) this.text += text;
  }

  /** What was collected since the last time. */
  take(): string {
    const { text } = this;
    this.text = '';
    return text;
  }
}

/** The texts that cells refer to by number (ECMA-376 part 1, 18.4.9). */
export function readSharedStrings(zip: Zip, member: string): string[] {
  const strings: string[] = [];
  const rich = new RichText();
  readXmlMember(zip, member, {
    open: name => rich.enter(name),
    close(name) {
      rich.leave(name);
      if (name === 'si') strings.push(rich.take());
    },
    text: text => rich.add(text),
  });
  return strings;
}
