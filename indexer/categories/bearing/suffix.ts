import type { Attrs } from '../../reading/reading.ts';

/**
 * What the letters behind a bearing's number mean. Makers differ in letters and agree in meaning, so the meaning is kept.
 * Sources: suffix tables of NSK, SKF and FBJ catalogues; longest first.
 */
const meanings: readonly (readonly [piece: string, says: Attrs])[] = [
  ['2rslt', { seal: 'two-non-contact-seals' }],
  ['2rsl', { seal: 'two-non-contact-seals' }],
  ['2rsh2', { seal: 'two-contact-seals' }],
  ['2rsh', { seal: 'two-contact-seals' }],
  ['2rs1', { seal: 'two-contact-seals' }],
  ['2rsr', { seal: 'two-contact-seals' }],
  ['2rs2', { seal: 'two-contact-seals' }],
  ['rs2z', { seal: 'two-contact-seals' }],
  ['2rs', { seal: 'two-contact-seals' }],
  ['2ru', { seal: 'two-contact-seals' }],
  ['2rd', { seal: 'two-contact-seals' }],
  ['2hrs', { seal: 'two-contact-seals' }],
  ['2rz', { seal: 'two-non-contact-seals' }],
  ['2z', { seal: 'two-shields' }],
  ['zzzz', { seal: 'two-shields' }],
  ['zz', { seal: 'two-shields' }],
  ['zzs', { seal: 'two-shields' }],
  ['ddu', { seal: 'two-contact-seals' }],
  ['dduc', { seal: 'two-contact-seals' }],
  ['dducm', { seal: 'two-contact-seals' }],
  ['dd', { seal: 'two-contact-seals' }],
  ['llu', { seal: 'two-contact-seals' }],
  ['llh', { seal: 'two-contact-seals' }],
  ['llb', { seal: 'two-non-contact-seals' }],
  ['vv', { seal: 'two-non-contact-seals' }],
  ['rsh', { seal: 'one-contact-seal' }],
  ['rs1', { seal: 'one-contact-seal' }],
  ['rsr', { seal: 'one-contact-seal' }],
  ['rs', { seal: 'one-contact-seal' }],
  ['ru', { seal: 'one-contact-seal' }],
  ['du', { seal: 'one-contact-seal' }],
  ['lu', { seal: 'one-contact-seal' }],
  ['rz', { seal: 'one-non-contact-seal' }],
  ['lb', { seal: 'one-non-contact-seal' }],
  ['mc1', { clearance: 'MC1' }],
  ['mc2', { clearance: 'MC2' }],
  ['mc3', { clearance: 'MC3' }],
  ['mc4', { clearance: 'MC4' }],
  ['mc5', { clearance: 'MC5' }],
  ['mc6', { clearance: 'MC6' }],
  ['c2', { clearance: 'C2' }],
  ['cn', { clearance: 'CN' }],
  ['c3', { clearance: 'C3' }],
  ['c4', { clearance: 'C4' }],
  ['c5', { clearance: 'C5' }],
  ['nr', {}],
  ['p0', {}],
  ['p6', {}],
  ['p5', {}],
  ['p4', {}],
  ['tn9', {}],
  ['tn', {}],
  ['ns7', {}],
  ['cm', {}],
  ['z', { seal: 'one-shield' }],
  ['v', { seal: 'one-non-contact-seal' }],
  ['n', {}],
];

/** The pieces by their first letter, the longest first. */
const piecesBy = new Map<string, (readonly [piece: string, says: Attrs])[]>();
for (const meaning of [...meanings].sort((a, b) => b[0].length - a[0].length)) {
  const letter = meaning[0][0]!;
  piecesBy.set(letter, [...(piecesBy.get(letter) ?? []), meaning]);
}

/** Reads a suffix such as `zzc3` or `2rs1-mc5`; null where a piece of it is unknown. */
export function readSuffix(text: string): Attrs | null {
  const attrs: Attrs = {};
  let rest = text;
  while (rest) {
    if (/^[-/ ]/.test(rest)) {
      rest = rest.slice(1);
      continue;
    }
    const piece = piecesBy.get(rest[0]!)?.find(([p]) => rest.startsWith(p));
    if (!piece) return null;
    for (const [key, value] of Object.entries(piece[1])) attrs[key] ??= value;
    rest = rest.slice(piece[0].length);
  }
  return attrs;
}
