import { deflateSync } from 'node:zlib';
import { PDFDocument, PDFName, StandardFonts } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { Refusal } from '../../../api/refusal.ts';
import { type ReadLimits, readInChild } from '../../../api/work/spawn-reader.ts';
import { makePdf, pdfKinds } from '../../documents/make-pdfs.ts';

const read = (bytes: Uint8Array, limits?: Partial<ReadLimits>) =>
  readInChild(bytes, { name: 'sheet.pdf', ...(limits && { limits }) });

async function refusalOf(bytes: Uint8Array): Promise<Refusal> {
  const refusal = await read(bytes).then(
    () => null,
    error => error as unknown,
  );
  expect(refusal).toBeInstanceOf(Refusal);
  return refusal as Refusal;
}

/** A PDF written by hand: its objects from number 1 on, the first of them its catalogue (ISO 32000-1, 7.5). */
function byHand(objects: readonly (string | Buffer)[], trailer = ''): Buffer {
  const parts: Buffer[] = [Buffer.from('%PDF-1.7\n')];
  for (const [nth, object] of objects.entries())
    parts.push(Buffer.from(`${nth + 1} 0 obj\n`), Buffer.from(object), Buffer.from('\nendobj\n'));
  parts.push(Buffer.from(`trailer << /Root 1 0 R /Size ${objects.length + 1} ${trailer} >>\n%%EOF`));
  return Buffer.concat(parts);
}

const stream = (data: Buffer, more: string): Buffer =>
  Buffer.concat([
    Buffer.from(`<< /Length ${data.length} ${more} >>\nstream\n`),
    data,
    Buffer.from('\nendstream'),
  ]);

const onePage = (content: Buffer, resources = '') =>
  byHand([
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 300 300] /Contents 4 0 R /Resources << ${resources} >> >>`,
    content,
  ]);

describe('a PDF that cannot be used is answered kindly: what was read, and what a person can do', () => {
  test('locked with a password', async () => {
    const locked = byHand(
      ['<< /Type /Catalog /Pages 2 0 R >>', '<< /Type /Pages /Kids [] /Count 0 >>'],
      `/ID [<00112233445566778899aabbccddeeff> <00112233445566778899aabbccddeeff>] /Encrypt << /Filter /Standard /V 1 /R 2 /P -4 /O <${'41'.repeat(32)}> /U <${'42'.repeat(32)}> >>`,
    );
    const refusal = await refusalOf(locked);
    expect(refusal.message).toContain('locked with a password');
    expect(refusal.remedy).toContain('without one');
  });

  test('cut off in its middle', async () => {
    const { bytes } = await makePdf(pdfKinds[0]!, 1);
    const refusal = await refusalOf(bytes.subarray(0, 400));
    expect(refusal.message).toContain('damaged or not all there');
  });

  test('three thousand blank pages', async () => {
    const pdf = await PDFDocument.create();
    for (let page = 0; page < 3000; page += 1) pdf.addPage([200, 200]);
    const refusal = await refusalOf(await pdf.save());
    expect(refusal.message).toContain('500 of 3000 pages were looked at');
  });

  test('a picture without text', async () => {
    const picture = Buffer.from(
      'q 200 0 0 200 0 0 cm BI /W 2 /H 2 /CS /G /BPC 8 ID \x00\x80\xff\x40 EI Q',
      'latin1',
    );
    const refusal = await refusalOf(onePage(stream(picture, '')));
    expect(refusal.message).toContain('a scan or photos');
    expect(refusal.remedy).toContain('comes later');
  });

  test('words, and no list', async () => {
    const pdf = await PDFDocument.create();
    const font = await pdf.embedFont(StandardFonts.Helvetica);
    pdf.addPage().drawText('Dear customer, thank you for your patience with our winches.', {
      x: 50,
      y: 500,
      size: 11,
      font,
    });
    expect((await refusalOf(await pdf.save())).message).toContain('no parts list in it');
  });
});

describe('a PDF that means harm ends its own reading alone', () => {
  test('a page that inflates without end', async () => {
    const bomb = deflateSync(Buffer.alloc(400_000_000, '0 0 m 9 9 l S '));
    const refusal = await refusalOf(onePage(stream(bomb, '/Filter /FlateDecode')));
    expect(['too-much-memory', 'too-slow', 'no-rows', 'unreadable']).toContain(refusal.code);
  }, 120_000);

  test('a script and an attachment are neither run nor read', async () => {
    const pdf = await PDFDocument.create();
    const font = await pdf.embedFont(StandardFonts.Helvetica);
    const page = pdf.addPage();
    const rows = [
      ['Ref', 'Part No', 'Description', 'Qty'],
      ['1', 'AB-101', 'Screw M3x8', '2'],
      ['2', 'AB-102', 'Nut M3', '1'],
    ];
    for (const [nth, cells] of rows.entries())
      for (const [at, text] of cells.entries())
        page.drawText(text, { x: 50 + at * 110, y: 700 - nth * 16, size: 10, font });
    pdf.addJavaScript('open', 'app.alert("hello")');
    await pdf.attach(Buffer.from('Ref;Part No\n9;EVIL-9'), 'more.csv', { mimeType: 'text/csv' });
    const { rows: found } = await read(await pdf.save());
    expect(found.filter(row => row.outcome === 'taken').map(row => row.partNumber)).toEqual([
      'AB-101',
      'AB-102',
    ]);
  });

  test('the pages before one that takes too long are kept, the rest is told', async () => {
    const { bytes, list } = await makePdf(
      { name: '', layout: { drawing: 'none', rowsPerPage: 10 }, wish: { lines: 20 } },
      4,
    );
    const pdf = await PDFDocument.load(bytes);
    const slow = pdf.addPage([300, 300]);
    const strokes = pdf.context.flateStream('0 0 m 9 9 l 3 4 l 1 1 9 9 8 8 c S '.repeat(4_000_000));
    slow.node.set(PDFName.of('Contents'), pdf.context.register(strokes));
    const { rows, faults } = await read(await pdf.save(), { time: 8000 });
    expect(rows.filter(row => row.outcome === 'taken')).toHaveLength(list.lines.length);
    expect(faults.at(-1)).toMatchObject({ code: 'page-too-much' });
    expect(faults.at(-1)!.remedy).toContain('take that in as well');
  }, 120_000);

  test('pages beyond five hundred are told', async () => {
    const { bytes, list } = await makePdf({ name: '', layout: { drawing: 'none' }, wish: { lines: 12 } }, 4);
    const pdf = await PDFDocument.load(bytes);
    for (let page = 0; page < 510; page += 1) pdf.addPage([200, 200]);
    const { rows, faults } = await read(await pdf.save());
    expect(rows.filter(row => row.outcome === 'taken')).toHaveLength(list.lines.length);
    expect(faults.at(-1)).toMatchObject({ code: 'pages-not-read', page: 501 });
    expect(faults.at(-1)!.remedy).toContain('Read the rest');
  }, 60_000);
});
