import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { printRows } from '../../../api/cli/rows.ts';
import { Refusal } from '../../../api/refusal.ts';
import { readInChild } from '../../../api/work/spawn-reader.ts';

const list = 'Pos;Part no;Description;Qty\n1;AB-101;Screw M3x8;4\n2;AB-102;Ball bearing 5x11x4;2\n';
const read = (text: string | Buffer, limits = {}) => readInChild(Buffer.from(text), { name: 'list', limits });

/** The refusal that reading ends in, and that it comes within ten seconds. */
async function refusalOf(reading: Promise<unknown>): Promise<Refusal> {
  const started = Date.now();
  const answer = await reading.then(
    () => null,
    error => error,
  );
  expect(answer).toBeInstanceOf(Refusal);
  expect(Date.now() - started).toBeLessThan(10_000);
  const { place, message, remedy } = answer as Refusal;
  for (const words of [place, message, remedy]) expect(words.length).toBeGreaterThan(3);
  return answer as Refusal;
}

describe('a document is read in a child', () => {
  test('its rows come with their readings, and progress on the way', async () => {
    const steps: number[][] = [];
    const found = await readInChild(Buffer.from(list), {
      name: 'list.csv',
      onProgress: (done, total) => steps.push([done, total]),
    });
    expect(found.document).toMatchObject({ name: 'list.csv', pages: 1 });
    expect(found.rows.map(row => row.reading?.size ?? null)).toEqual([
      null,
      'screw M3x0.5x8',
      'bearing 5x11x4',
    ]);
    expect(steps[0]).toEqual([0, 2]);
    expect(steps.at(-1)).toEqual([2, 2]);
  });

  test('what a person says of its columns goes with it', async () => {
    const columns = [['qty', 'partNumber', 'description', 'ref'] as const];
    const found = await readInChild(Buffer.from(list), { name: 'list', columns });
    expect(found.rows.slice(1).map(({ ref, qty }) => [ref, qty])).toEqual([
      ['4', 1],
      ['2', 2],
    ]);
    expect(found.tables[0]!.columns[0]).toMatchObject({ title: 'Pos', meaning: 'qty' });
  });

  test('it has no environment and stands in no folder of ours', async () => {
    const spy = join(tmpdir(), `fettle-spy-${process.pid}.mjs`);
    writeFileSync(
      spy,
      `process.stdin.resume(); process.stdin.on('end', () => { const faults = [{ message: JSON.stringify([process.env, process.cwd(), process.argv.slice(2)]) }];
       process.stdout.write(JSON.stringify({ result: { faults } }) + '\\n'); });`,
    );
    const found = await readInChild(Buffer.from(list), { name: 'list', workerFile: spy });
    expect(JSON.parse(found.faults[0]!.message)).toEqual([{}, '/', []]);
  });

  test('a reading that is no longer wanted is ended', async () => {
    const stop = new AbortController();
    const reading = readInChild(Buffer.from(list.repeat(5000)), { name: 'list', signal: stop.signal });
    stop.abort(new Error('closing'));
    await expect(reading).rejects.toThrow('closing');
  });
});

describe('what is beyond a limit is refused, with place and remedy', () => {
  const row = (at: number) => `${at};AB-${at};Screw M3x8;4\n`;
  const long = `Pos;Part no;Description;Qty\n${Array.from({ length: 20_000 }, (_, at) => row(at)).join('')}`;

  test('bytes, before anything is started', async () => {
    expect(await refusalOf(read(Buffer.alloc(50_000_000, 'x')))).toMatchObject({
      code: 'too-large',
      status: 413,
    });
  });
  test('time', async () => {
    expect((await refusalOf(read(long, { time: 60 }))).code).toBe('too-slow');
  });
  test('memory', async () => {
    expect((await refusalOf(read(long, { memory: 50 * 1024 * 1024 }))).code).toBe('too-much-memory');
  });
  test('rows, naming the first beyond', async () => {
    const refusal = await refusalOf(read(long, { rows: 1000 }));
    expect(refusal).toMatchObject({ code: 'too-large', place: 'list, row 1001' });
  });
  test('bytes of the answer', async () => {
    expect((await refusalOf(read(long, { output: 10_000 }))).code).toBe('too-large');
  });
  test('a list that is too long for any machine of a bench', async () => {
    const rows = Buffer.from(`Pos;Part no;Description;Qty\n${row(1).repeat(300_000)}`);
    expect((await refusalOf(read(rows))).code).toBe('too-large');
  });
});

describe('what is no list is refused in plain words', () => {
  const cases: [string, Buffer, string][] = [
    ['an empty file', Buffer.alloc(0), 'no-rows'],
    ['a million blank lines', Buffer.from('\n'.repeat(1_000_000)), 'no-rows'],
    ['a million rows of empty cells', Buffer.from(';;;;\n'.repeat(1_000_000)), 'no-rows'],
    ['a PDF that ends after its first bytes', Buffer.from('%PDF-1.4\n1 0 obj'), 'unreadable'],
    ['a spreadsheet cut off after its first bytes', Buffer.from('PK\x03\x04\x14\0'), 'unreadable'],
    ['a web page whose table is empty', Buffer.from('<!doctype html><table>'), 'no-rows'],
    ['a photo', Buffer.from('ffd8ffe000104a464946', 'hex'), 'unknown-kind'],
    ['zero bytes', Buffer.from('1;AB\0;x\n'), 'unreadable'],
    ['control characters', Buffer.from('\x01\x02\x03\x05'.repeat(500)), 'unreadable'],
  ];
  for (const [title, bytes, code] of cases)
    test(title, async () => expect((await refusalOf(read(bytes))).code).toBe(code));

  test('the remedy for a kind that is not read yet', async () => {
    const refusal = await refusalOf(read(Buffer.from('ffd8ffe000104a464946', 'hex')));
    expect(refusal.message).toContain('reads PDF, XLSX, ODS, CSV, web pages and pasted text so far');
    expect(refusal.remedy).toContain('copy the list and paste it as text');
  });
});

describe('what is wrong in one place is a fault there, and the rest is read', () => {
  const taken = async (bytes: Buffer | string) => {
    const { rows, faults } = await read(bytes);
    return {
      taken: rows.filter(row => row.outcome === 'taken').map(row => row.partNumber),
      faulted: rows.filter(row => row.outcome === 'faulted').map(row => row.place),
      faults: faults.map(({ code, place }) => `${code}, ${place}`),
    };
  };

  test('a line of 24 MB', async () => {
    expect(await taken(Buffer.concat([Buffer.from(list), Buffer.alloc(24_000_000, 'x')]))).toMatchObject({
      taken: ['AB-101', 'AB-102'],
      faults: ['line-too-long, row 4'],
    });
  });
  test('a quotation mark that is never closed', async () => {
    expect(await taken(`${list}3;AB-103;"Washer;1\n4;AB-104;Nut M3;1\n`)).toEqual({
      taken: ['AB-101', 'AB-102', 'AB-104'],
      faulted: ['row 4'],
      faults: ['unclosed-quote, row 4'],
    });
  });
  test('an unclosed quotation mark before twenty thousand rows', async () => {
    const rows = `Pos;Part no;Description;Qty\n1;AB-1;"Cap;1\n${'2;AB-2;Nut M3;2\n'.repeat(20_000)}`;
    const found = await taken(rows);
    expect(found.taken).toHaveLength(20_000);
    expect(found.faults).toEqual(['unclosed-quote, row 2']);
  });
  test('marks that turn the writing direction', async () => {
    expect(await taken(list.replace('AB-101', 'AB-\u202e101'))).toEqual({
      taken: ['AB-101', 'AB-102'],
      faulted: [],
      faults: ['hidden-characters, row 2'],
    });
  });
  test('bytes that are no UTF-8: a number is spoilt, words are put to a person', async () => {
    const broken = Buffer.concat([
      Buffer.from('Pos;Part no;Description;Qty\n1;AB-1;Écrou à créneaux;1\n2;AB-'),
      Buffer.from([0xff]),
      Buffer.from(';Vis;1\n3;AB-3;Bo'),
      Buffer.from([0xc3]),
      Buffer.from(' M3;1\n'),
    ]);
    const { rows, faults } = await read(broken);
    expect(rows.map(row => row.outcome)).toEqual(['skipped', 'taken', 'faulted', 'taken']);
    expect(faults.map(fault => fault.place)).toEqual(['row 3', 'row 4']);
    expect(rows[3]!.reading!.review).toBe(true);
  });
  test('halves of UTF-16 pairs', async () => {
    const { rows, faults } = await read(Buffer.from(list.replace('Screw', 'Screw \ud800'), 'utf16le'));
    expect(faults.map(fault => fault.code)).toEqual(['broken-characters']);
    expect(rows[1]!.reading!.notes.join()).toContain('could not be read');
  });
});

describe('fettle rows', () => {
  class Kept extends Writable {
    text = '';
    override _write(chunk: Buffer, _: string, done: () => void): void {
      this.text += chunk.toString();
      done();
    }
  }
  const run = async (file: string) => {
    const [output, errors] = [new Kept(), new Kept()];
    const code = await printRows(file, output, errors);
    return { code, output: output.text, errors: errors.text };
  };

  test('prints one JSON object', async () => {
    const file = join(tmpdir(), `fettle-rows-${process.pid}.csv`);
    writeFileSync(file, list);
    const { code, output, errors } = await run(file);
    expect([code, errors]).toEqual([0, '']);
    expect(Object.keys(JSON.parse(output)).sort()).toEqual([
      'balloons',
      'document',
      'faults',
      'relations',
      'rows',
      'tables',
    ]);
  });
  test('says what is wrong on standard error and nothing else', async () => {
    const { code, output, errors } = await run(join(tmpdir(), 'no-such-list.csv'));
    expect([code, output]).toEqual([1, '']);
    expect(errors).toContain('There is no such file.');
    expect((await run(tmpdir())).errors).toContain('This is a folder.');
  });
});
