import { Chance } from './random.ts';
import { type Language, type Words, words } from './words.ts';

/** One line of an invented list, and what it must give. */
export interface Line {
  ref: string;
  partNumber: string;
  description: string;
  qty: number | null;
  qtyText: string;
  remarks: string;
  price: string;
  unit: string;
  /** Quantities for each model, where the list is one of several models. */
  variants: Record<string, number>;
  /** A heading that stands above this line. */
  heading?: string;
  supersededBy?: string;
  includes?: string[];
  serial?: { from?: string; to?: string };
  notSold?: boolean;
  option?: boolean;
}

export interface List {
  language: Language;
  words: Words;
  maker: string;
  models: string[];
  lines: Line[];
}

const makers = ['Brindlow', 'Corvane', 'Hestrel', 'Pellworth', 'Ondrey', 'Wyke & Calder'];
const names = ['Tarn 40', 'Fell 3', 'Mere 12', 'Skell 7', 'Rigg 25', 'Holme 9'];
/** How a maker builds its part numbers: 9 a digit, A a letter that stays. */
const builds = [
  'AA-999',
  'AA99-999',
  'A9 99 999',
  '9.999.99',
  '99-9999',
  '9999-99-9',
  'AA9999',
  '999999',
  'A99999-99',
];
const pitchless = ['2', '2.5', '3', '4', '5', '6'];

export interface Wish {
  language?: Language;
  lines?: number;
  /** Columns of quantities for so many models. */
  models?: number;
  prices?: boolean;
  headings?: boolean;
}

/** An invented list of one model or several, with relations of every kind on it. */
export function makeList(seed: number, wish: Wish = {}): List {
  const chance = new Chance(seed);
  const language = wish.language ?? chance.pick(Object.keys(words) as Language[]);
  const own: Words = words[language];
  const count = wish.lines ?? chance.whole(25, 60);
  const models = wish.models ? ['1000', '2500', '4000', '6000'].slice(0, wish.models) : [];
  const build = chance.pick(builds).replace(/A/g, () => chance.pick([...'BDGHKMNPTV']));
  const numbers = new Set<string>();
  const numberOf = () => {
    for (;;) {
      const number = build.replace(/9/g, () => String(chance.whole(0, 9))).replace(/^0/, '7');
      if (!numbers.has(number)) {
        numbers.add(number);
        return number;
      }
    }
  };
  const comma = language !== 'en' && language !== 'ja' && chance.in100(60);
  const lines: Line[] = [];
  for (let ref = 1; lines.length < count; ref += 1) {
    const line = plainLine(chance, own, String(ref), numberOf(), comma);
    if (wish.headings && ref % 12 === 1) line.heading = chance.pick(own.headings);
    lines.push(line);
    const more = chance.whole(0, 99);
    if (more < 4) lines.push(plainLine(chance, own, `${ref}A`, numberOf(), comma));
    else if (more < 8) splitBySerial(chance, own, lines, numberOf());
    else if (more < 12) mirror(own, lines, numberOf());
  }
  relate(chance, own, lines, numberOf);
  for (const line of lines) {
    if (models.length > 0) countForModels(chance, line, models);
    if (wish.prices) line.price = `${chance.whole(1, 80)}${comma ? ',' : '.'}${chance.whole(10, 99)}`;
  }
  return { language, words: own, maker: `${chance.pick(makers)} ${chance.pick(names)}`, models, lines };
}

function plainLine(chance: Chance, own: Words, ref: string, partNumber: string, comma: boolean): Line {
  const asked = chance.in100(3);
  const qty = asked ? null : chance.pick([1, 1, 1, 1, 2, 2, 3, 4, 6, 8, 12]);
  return {
    ref,
    partNumber,
    description: sized(chance, chance.pick(own.parts), comma),
    qty,
    qtyText: asked ? chance.pick(own.asRequired) : String(qty),
    remarks: '',
    price: '',
    unit: own.piece,
    variants: {},
  };
}

function sized(chance: Chance, part: string, comma: boolean): string {
  const bore = chance.whole(3, 12);
  const sizes: Record<string, () => string> = {
    bearing: () => `${bore}x${bore + chance.whole(5, 9)}x${chance.whole(2, 5)}`,
    screw: () => `M${chance.pick(pitchless)}x${chance.whole(4, 20)}`,
    nut: () => `M${chance.pick(pitchless)}`,
    washer: () => `${bore}.2x${bore + chance.whole(3, 8)}x0.${chance.whole(1, 9)}`,
    dia: () => String(bore),
    oring: () => `${bore}x1.${chance.whole(1, 9)}`,
    pin: () => `${chance.whole(1, 4)}x${chance.whole(8, 30)}`,
  };
  const text = part.replace(/#(\w+)/, (_, kind: string) => sizes[kind]!());
  return comma ? text.replace(/(\d)\.(\d)/g, '$1,$2') : text;
}

/** One reference on two lines, for earlier and later machines. */
function splitBySerial(chance: Chance, own: Words, lines: Line[], partNumber: string): void {
  const first = lines.at(-1)!;
  const serial = chance.whole(11, 98) * 1000;
  Object.assign(first, {
    remarks: chance.pick(own.remarks.to).replace('{s}', String(serial)),
    serial: { to: String(serial) },
  });
  lines.push({
    ...first,
    partNumber,
    remarks: chance.pick(own.remarks.from).replace('{s}', String(serial + 1)),
    serial: { from: String(serial + 1) },
  });
  delete lines.at(-1)!.heading;
}

function mirror(own: Words, lines: Line[], partNumber: string): void {
  const first = lines.at(-1)!;
  const { description } = first;
  first.description = `${description} ${own.sides[0]}`;
  lines.push({ ...first, ref: `${first.ref}A`, partNumber, description: `${description} ${own.sides[1]}` });
  delete lines.at(-1)!.heading;
}

function relate(chance: Chance, own: Words, lines: Line[], numberOf: () => string): void {
  for (const [at, line] of lines.entries()) {
    if (line.remarks || line.qty === null) continue;
    const following = [...new Set(lines.slice(at + 1, at + 6).map(({ ref }) => ref))];
    const [from, ...further] = following.filter(ref => ref !== line.ref && /^\d+$/.test(ref));
    const to = further.at(-1);
    if (chance.in100(6) && to && !line.serial) {
      line.description = own.assembly;
      line.includes = refsFrom(lines, Number(from), Number(to));
      line.remarks = chance.pick(own.remarks.includes).replace('{a}', from!).replace('{b}', to);
    } else if (chance.in100(6)) {
      line.supersededBy = numberOf();
      line.remarks = chance.pick(own.remarks.superseded).replace('{n}', line.supersededBy);
    } else if (chance.in100(4)) {
      line.notSold = true;
      line.remarks = chance.pick(own.remarks.notSold);
    } else if (chance.in100(3)) {
      line.option = true;
      line.remarks = chance.pick(own.remarks.option);
    }
  }
}

/** The references whose number lies in a range, ends and suffixed ones counted in. */
function refsFrom(lines: readonly Line[], from: number, to: number): string[] {
  const inside = lines
    .map(({ ref }) => ref)
    .filter(ref => {
      const number = Number.parseInt(ref, 10);
      return number >= from && number <= to;
    });
  return [...new Set(inside)];
}

function countForModels(chance: Chance, line: Line, models: readonly string[]): void {
  const qty = line.qty ?? 1;
  line.variants = Object.fromEntries(models.map(model => [model, chance.in100(80) ? qty : 0]));
  if (Object.values(line.variants).every(count => count === 0)) line.variants[models[0]!] = qty;
  line.qty = null;
  line.qtyText = '';
}
