/** Marks that draw nothing: zero-width spaces and joiners, soft hyphens, byte order marks. */
const invisible = /[\u00ad\u180e\u200b-\u200d\u2060\ufeff]/g;
/** Marks that turn the direction of what follows, so that a number can be shown other than it is. */
const turning = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;
/** Control characters other than tab, line feed, form feed and carriage return. */
const controls = /[\x00-\x08\x0b\x0e-\x1f\x7f-\x9f]/g;
const blanks = /[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/g;

export interface Cleaned {
  text: string;
  /** True when control characters or marks of direction were taken out. */
  hidden: boolean;
  /** True when a character could not be read (U+FFFD). */
  broken: boolean;
}

/** A line as a person sees it: one kind of space, nothing that draws nothing. */
export function clean(line: string): Cleaned {
  if (/^[\t\x20-\x7e]*$/.test(line)) return { text: line, hidden: false, broken: false };
  const seen = line.replace(invisible, '').replace(blanks, ' ');
  const text = seen.replace(turning, '').replace(controls, '');
  return { text, hidden: text.length < seen.length, broken: text.includes('�') };
}

/** Full-width letters, digits and signs as the plain ones that they stand for. */
export function narrow(text: string): string {
  return text.replace(/[\uff01-\uff5e]/g, sign => String.fromCharCode(sign.charCodeAt(0) - 0xfee0));
}

/** The share of control characters above which a document is no text; a few strays in a short one are let pass. */
const mostControls = 0.02;
const strays = { most: 8, share: 0.1 };

/** True for text as people write it: hardly any control characters in its beginning. */
export function isProse(text: string): boolean {
  const start = text.slice(0, 65_536);
  const found = start.length - start.replace(controls, '').length;
  return found <= Math.max(start.length * mostControls, Math.min(strays.most, start.length * strays.share));
}
