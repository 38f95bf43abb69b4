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

/** The bytes of every sign, from what the platform's own decoder makes of all single bytes and pairs. */
function tableOf(encoding: Encoding): ReadonlyMap<string, number[]> {
  const decoder = new TextDecoder(encoding);
  const table = new Map<string, number[]>();
  const learn = (...bytes: number[]) => {
    const signs = [...decoder.decode(Uint8Array.from(bytes))];
    if (signs.length === 1 && signs[0] !== '\ufffd' && !table.has(signs[0]!)) table.set(signs[0]!, bytes);
  };
  for (let byte = 0; byte < 256; byte += 1) learn(byte);
  if (encoding !== 'windows-1252')
    for (let first = 0x81; first < 256; first += 1)
      for (let second = 0x40; second < 256; second += 1) learn(first, second);
  return table;
}
