import type { Claim } from '../reading/claim.ts';
import type { Line } from '../reading/line.ts';

/** What a cylindrical and a domed head are with each drive: DIN 912 and DIN 84; ISO 7380, DIN 7985 and ISO 14583. */
const byDrive: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  cylinder: { 'hex-socket': 'socket-cap', slotted: 'cheese' },
  dome: { 'hex-socket': 'button', phillips: 'pan', pozidriv: 'pan', torx: 'pan' },
};

/**
 * Settles what words leave to each other: "cylinder head" and "dome head" are named by their drive, and stay open without one;
 * a bare "hex" is the head, or the socket in a head that is named.
 */
export function settleHead(claim: Claim): void {
  const { attrs } = claim;
  if (attrs['hexagon'] !== undefined) {
    const { head } = attrs;
    // A cap screw with a hexagon is no socket screw.
    const own = head === undefined || (head === 'socket-cap' && attrs['drive'] === undefined);
    rename(claim, 'hexagon', own ? 'head' : 'drive', own ? 'hex' : 'hex-socket');
  }
  settlePh(claim);
  const open = byDrive[String(attrs['head'])];
  if (!open) return;
  const named = open[String(attrs['drive'])];
  if (named === undefined) drop(claim, 'head');
  else attrs['head'] = named;
}

/** PH is a Phillips recess; beside another drive it is the pan head. */
function settlePh(claim: Claim): void {
  const { attrs } = claim;
  if (attrs['ph'] === undefined) return;
  if (attrs['drive'] === undefined) rename(claim, 'ph', 'drive', 'phillips');
  else if (attrs['head'] === undefined) rename(claim, 'ph', 'head', 'pan');
  else drop(claim, 'ph');
}

/**
 * The letter behind a standard's size names its cross recess: H for Phillips, Z for Pozidriv (ISO 4757), as in DIN 7985 - M3x16 - Z.
 */
export function settleRecess(claim: Claim, { tokens, standards, threads }: Line): void {
  if (claim.attrs['drive'] !== 'phillips' || standards.length === 0) return;
  const sized = threads.at(-1)?.last ?? -1;
  const letter = tokens.find(
    (t, at) =>
      at > sized &&
      /^[hz]$/.test(t.text) &&
      (t.gap > 0 || tokens[at - 1]?.text === '-') &&
      !follows(tokens, at),
  );
  if (letter?.text === 'z') claim.attrs['drive'] = 'pozidriv';
  if (letter) claim.span('drive', letter);
}

const follows = (tokens: Line['tokens'], at: number) =>
  tokens[at + 1]?.gap === 0 && tokens[at + 1]!.kind !== 'mark';

function rename({ attrs, spans }: Claim, from: string, to: string, value: string): void {
  delete attrs[from];
  if (to === 'drive' && attrs[to] !== undefined) return;
  attrs[to] = value;
  for (const span of spans) if (span.field === from) span.field = to;
}

function drop(claim: Claim, key: string): void {
  delete claim.attrs[key];
  claim.spans.splice(0, claim.spans.length, ...claim.spans.filter(span => span.field !== key));
}
