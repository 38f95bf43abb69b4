export type Encoding =
  | 'utf-8'
  | 'utf-8 with mark'
  | 'utf-16le'
  | 'utf-16be'
  | 'windows-1252'
  | 'shift_jis'
  | 'euc-jp';

const tables = new Map<string, ReadonlyMap<string, number[]>>();

/** Text in an encoding; signs that it lacks are question marks. */
export function encode(text: string, encoding: Encoding): Uint8Array {
  if (encoding === 'utf-8') return Buffer.from(text);
  if (encoding === 'utf-8 with mark') return Buffer.from(`\ufeff${text}`);
  if (encoding === 'utf-16le') return Buffer.from(text, 'utf16le');
  if (encoding === 'utf-16be') return Buffer.from(text, 'utf16le').swap16();
  const table = tables.get(encoding) ?? tableOf(encoding);
  tables.set(encoding, table);
  return Uint8Array.from([...text].flatMap(sign => table.get(sign) ?? [0x3f]));
}

/** Bytes 80 to FF of Windows-1252 (Unicode mapping table CP1252), since some platforms' decoders have it wrong. */
const windows = `€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ${String.fromCharCode(...Array.from({ length: 96 }, (_, at) => 0xa0 + at))}`;

/** The bytes of every sign, from what the platform's own decoder makes of all single bytes and pairs. */
function tableOf(encoding: Encoding): ReadonlyMap<string, number[]> {
  const decoder = new TextDecoder(encoding);
  const table = new Map<string, number[]>();
  const learn = (...bytes: number[]) => {
    const signs = [...decoder.decode(Uint8Array.from(bytes))];
    if (signs.length === 1 && signs[0] !== '\ufffd' && !table.has(signs[0]!)) table.set(signs[0]!, bytes);
  };
  if (encoding === 'windows-1252')
    [...windows].forEach((sign, at) => {
      table.set(sign, [at < 32 ? 0x80 + at : 0xa0 + at - 32]);
    });
  for (let byte = 0; byte < (encoding === 'windows-1252' ? 128 : 256); byte += 1) learn(byte);
  if (encoding !== 'windows-1252')
    for (let first = 0x81; first < 256; first += 1)
      for (let second = 0x40; second < 256; second += 1) learn(first, second);
  return table;
}
