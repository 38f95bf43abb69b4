import type { PdfKind } from './make-pdfs.ts';
import { Chance } from './random.ts';
import type { PdfLayout } from './write-pdf.ts';

const narrow: PdfLayout['fields'] = ['ref', 'partNumber', 'description', 'qty'];
const orders: PdfLayout['fields'][] = [
  ['ref', 'partNumber', 'description', 'qty', 'remarks'],
  ['ref', 'description', 'partNumber', 'qty', 'remarks'],
  ['ref', 'qty', 'partNumber', 'description', 'remarks'],
  ['partNumber', 'description', 'qty', 'remarks', 'ref'],
];

/** A kind of PDF that chance lays out: any of its properties may come together with any other that it can go with. */
export function randomKind(seed: number): PdfKind {
  const chance = new Chance(seed * 7919);
  const groups = chance.pick([1, 1, 1, 2, 3, 4]);
  const models = groups === 1 && chance.in100(15);
  const drawing =
    groups > 1
      ? chance.pick(['own page', 'last page', 'own document'] as const)
      : chance.pick(['own page', 'last page', 'beside', 'beside', 'own document'] as const);
  const drawn = chance.pick([
    'every page',
    'every page',
    'every page',
    'first page',
    'bottom',
    'none',
  ] as const);
  // Without titles nobody can tell what the columns of quantities are for.
  const header = models ? 'every page' : drawn;
  const rules = chance.pick(['grid', 'grid', 'rows', 'columns', 'zebra', 'none'] as const);
  const sections = groups === 1 && header === 'every page' && !models && chance.in100(25);
  const headings = !sections && header === 'every page' && groups === 1 && chance.in100(25);
  const bare = chance.in100(25);
  const layout: Partial<PdfLayout> = {
    fields: models
      ? ['ref', 'partNumber', 'description', 'models', 'remarks']
      : groups > 1
        ? narrow
        : chance.pick(orders),
    groups,
    rules,
    header,
    headings,
    sections,
    middle: chance.in100(20),
    font: chance.in100(12) ? 'Courier' : 'Helvetica',
    type3: chance.in100(20),
    hand: {
      pieces: chance.pick(['whole', 'whole', 'words', 'letters']),
      scale: chance.pick([1, 1, 10, 0.24]),
    },
    rowsPerPage: [40, 25, 18, 12][groups - 1]!,
    turn: chance.pick([
      {},
      {},
      {},
      { page: 90 as const },
      { page: 270 as const },
      { page: 180 as const },
      { content: 90 as const },
      { content: 270 as const },
      { content: 90 as const, page: 270 as const },
    ]),
    shuffled: chance.in100(50),
    hidden: chance.in100(40),
    drawing,
    frame: chance.in100(40),
    style: {
      balloons: bare ? 'bare' : chance.pick(['circled', 'circled', 'circled', 'oval'] as const),
      ring: chance.pick(['curves', 'curves', 'halves', 'quarters', 'polygon', 'strokes', 'hexagon'] as const),
      leader: chance.pick(
        bare
          ? (['straight', 'arrow', 'dot'] as const)
          : (['straight', 'bent', 'arrow', 'dot', 'none'] as const),
      ),
      dimensions: chance.in100(50),
      notes: chance.in100(50),
      ranges: chance.in100(15),
      pairs: chance.in100(20),
      times: chance.in100(15),
      split: !bare && chance.in100(15),
      around: chance.in100(40),
    },
  };
  if (header === 'bottom' || drawing === 'beside') layout.rowsPerPage = groups > 1 ? layout.rowsPerPage! : 36;
  if (sections) layout.rowsPerPage = 30;
  const wish: PdfKind['wish'] = {
    ...(headings && { headings: true }),
    ...(models && { models: chance.whole(2, 4) }),
    ...(chance.in100(12) && { language: 'ja' as const }),
  };
  return { name: `drawn by chance, ${seed}`, layout, wish };
}
