import type { Attrs, Dims, Reading } from '../../indexer/index.ts';

/** A line with the reading that a careful person would give it. */
export interface LabelledLine {
  id: string;
  text: string;
  context?: string;
  lang: string;
  style: string;
  expect: {
    category: string;
    /** Other categories that count as right. */
    accept?: string[];
    dims?: Dims;
    attrs?: Attrs;
    qty?: number;
    /** A person should look. */
    review?: boolean;
    /** Keys that must not be given a value: `dims`, `dims.length`, `qty`. */
    must_not?: string[];
  };
}

/** How one reading compares with its label. A null field was not asked for. */
export interface Score {
  category: boolean;
  dims: boolean | null;
  /** Category, dimensions, and nothing that must not be given. */
  whole: boolean;
  attrs: { asked: number; right: number };
  qty: boolean | null;
  /** Put before a person, where that is right. */
  review: boolean | null;
  /** Put before a person though the reading is right and plain. */
  askedNeedlessly: boolean;
  /** Dimensions and attributes given that neither label nor standard gives. */
  invented: number;
  given: number;
  wrong: string[];
}

const tolerance = 0.021;

const sameThread = (a: unknown, b: unknown) => foldThread(a) === foldThread(b);
const foldThread = (value: unknown) =>
  String(value)
    .toUpperCase()
    .replace(/[ "#]|UN[CF]/g, '');

/** Attributes that a label may leave out though the text states them. */
const free = new Set(['standard', 'type', 'grade', 'material', 'drive', 'head']);

function wrongDims(expected: Dims, given: Dims): string[] {
  return Object.entries(expected).flatMap(([key, value]) => {
    const got = given[key];
    const right =
      key === 'thread'
        ? got !== undefined && sameThread(got, value)
        : typeof got === 'number' && Math.abs(got - Number(value)) <= tolerance;
    return right ? [] : [`${key} ${got ?? 'none'}, not ${value}`];
  });
}

/** Scores a reading against its label. */
export function score({ expect }: LabelledLine, reading: Reading): Score {
  const unsure = expect.category === 'unsure';
  const asks = reading.certainty < 0.7 || reading.review || reading.category === 'unsure';
  const category = [expect.category, ...(expect.accept ?? [])].includes(reading.category) || (unsure && asks);
  const same = reading.category === expect.category;
  const wrong: string[] = category ? [] : [`${reading.category}, not ${expect.category}`];
  if (category && same) {
    wrong.push(...wrongDims(expect.dims ?? {}, reading.dims));
    const bare = unsure || expect.category === 'plain' || expect.category === 'not-a-part';
    if (bare && Object.keys(reading.dims).length > 0) wrong.push('dimensions given');
  }
  const dimsRight = wrong.length === 0;
  for (const key of expect.must_not ?? []) {
    const broken =
      key === 'dims'
        ? Object.keys(reading.dims).length > 0
        : key === 'qty'
          ? reading.qty !== null
          : key.slice(5) in reading.dims;
    if (broken) wrong.push(`${key} given`);
  }
  const whole = wrong.length === 0;
  const attrs = Object.entries(expect.attrs ?? {});
  const missing = attrs.filter(
    ([key, value]) => String(reading.attrs[key]).toLowerCase() !== String(value).toLowerCase(),
  );
  for (const [key, value] of missing) wrong.push(`${key} ${reading.attrs[key] ?? 'none'}, not ${value}`);
  const qty = expect.qty === undefined ? null : reading.qty === expect.qty;
  if (qty === false) wrong.push(`qty ${reading.qty}, not ${expect.qty}`);
  if (expect.review && !asks) wrong.push('not put before a person');
  const judged = category && same && !expect.review;
  const extraDims = Object.keys(reading.dims).filter(
    k => !(k in (expect.dims ?? {})) && !(k in reading.implied) && k !== 'pitch',
  );
  const extraAttrs = Object.keys(reading.attrs).filter(
    k => !(k in (expect.attrs ?? {})) && !(expect.attrs ? free.has(k) : k === 'standard' || k === 'type'),
  );
  return {
    category,
    dims: expect.dims ? dimsRight : null,
    whole,
    attrs: { asked: attrs.length, right: category ? attrs.length - missing.length : 0 },
    qty,
    review: expect.review ? asks : null,
    askedNeedlessly: asks && whole && !expect.review && !unsure,
    invented: judged ? extraDims.length + extraAttrs.length : 0,
    given: judged ? Object.keys(reading.dims).length + Object.keys(reading.attrs).length : 0,
    wrong:
      judged && extraDims.length + extraAttrs.length > 0
        ? [...wrong, `invented ${[...extraDims, ...extraAttrs].join(', ')}`]
        : wrong,
  };
}
