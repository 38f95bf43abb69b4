import type { Claim } from '../reading/claim.ts';
import type { Line } from '../reading/line.ts';
import type { Dims } from '../reading/reading.ts';
import type { Token } from '../reading/tokens.ts';
import { attributesOf } from '../standards/part-standards.ts';
import { mm } from '../units/length.ts';
import type { CategoryDefinition } from './definition.ts';
import { drawGear } from './draw-gear.ts';

/** Every number of teeth that the line prints: 16T/32T, 20/40T. */
function teethIn(tokens: readonly Token[]): number[] {
  const teeth: number[] = [];
  for (let at = 1; at < tokens.length; at++) {
    if (tokens[at]!.text !== 't' || tokens[at]!.gap > 0 || !/^\d{1,3}$/.test(tokens[at - 1]!.text)) continue;
    teeth.push(Number(tokens[at - 1]!.text));
    if (tokens[at - 2]?.text === '/' && /^\d{1,3}$/.test(tokens[at - 3]?.text ?? ''))
      teeth.push(Number(tokens[at - 3]!.text));
  }
  return teeth;
}

function giveModule(claim: Claim, number: Token): void {
  const value = Number(number.text.replace(',', '.'));
  if (value > 0 && value <= 10) claim.count('module', value, number);
}

/** Reads teeth, module and bore of a gear: `20T`, `20 teeth`, `M1`, `module 0.5`, `2M`, `bore 5`. */
function settle(claim: Claim, line: Line): void {
  const { tokens } = line;
  for (const measure of line.measures) {
    if (measure.label === 'teeth' && measure.whole) claim.count('teeth', measure.value, measure);
    else if (measure.label === 'module') claim.count('module', measure.value, measure);
    else if (measure.label === 'bore' || measure.label === 'id') claim.measure('bore', measure);
  }
  for (let at = 1; at < tokens.length; at++) {
    const [number, letter] = [tokens[at - 1]!, tokens[at]!];
    if (
      number.kind === 'number' &&
      letter.gap <= 1 &&
      /^(t|z|th|gt)$/.test(letter.text) &&
      /^\d{1,3}$/.test(number.text) &&
      !(letter.gap === 1 && letter.text === 'z')
    )
      claim.count('teeth', Number(number.text), { start: number.start, end: letter.end });
    if (letter.kind === 'number' && letter.gap === 0 && number.text === 'z' && /^\d{1,3}$/.test(letter.text))
      claim.count('teeth', Number(letter.text), letter);
    // 0.5M, 2M
    if (number.kind === 'number' && letter.gap === 0 && letter.text === 'm' && tokens[at + 1]?.gap !== 0)
      giveModule(claim, number);
    if (letter.kind === 'number' && letter.gap <= 1 && number.text === 'm' && number.gap > 0) {
      giveModule(claim, letter);
    }
  }
  const teeth = new Set(teethIn(tokens));
  if (teeth.size > 1) {
    claim.contradict(`more than one number of teeth: ${[...teeth].join(', ')}`);
    claim.counts.delete('teeth');
  }
  if (claim.counts.has('teeth')) claim.features.add('labelled');
}

export const gear: CategoryDefinition = {
  name: 'gear',
  title: 'Gear',
  plural: 'Gears',
  dims: [
    { key: 'module', label: 'module', unit: 'count', near: [0.1, 0.2] },
    { key: 'teeth', label: 'teeth', unit: 'count', near: [2, 0.1] },
    { key: 'bore', label: 'bore', diameter: true, unit: 'mm', limits: [mm(0.5), mm(100)] },
  ],
  sizeDims: ['module', 'teeth'],
  itemAttrs: ['material', 'hand'],
  labels: { bore: 'bore', id: 'bore', teeth: 'teeth', module: 'module' },
  words: {
    nouns: {
      en: {
        'gear, pinion, spur gear, worm gear, worm wheel, worm, bevel gear, drive gear, main gear, pinion gear, gears, idler gear, gear wheel, gearwheel, ring gear, helical gear, planet gear, sun gear, planetary gear, crown gear, face gear, crown wheel, bevel wheel, cluster gear, gear cluster, oscillating gear, oscillation gear, cog, cogwheel, sector gear, ratchet gear, helical pinion':
          {},
      },
      de: {
        'zahnrad, ritzel, stirnrad, schneckenrad, schnecke, kegelrad, antriebsritzel, zahnräder, planetenrad, hohlrad, sonnenrad, tellerrad, antriebsrad gezahnt, zwischenrad, kronrad':
          {},
      },
      fr: {
        "engrenage, pignon, roue dentee, roue a vis, vis sans fin roue, couronne, pignon conique, engrenages, pignon d'attaque, vis sans fin, roue helicoidale, couronne dentee, planetaire, satellite, pignon satellite":
          {},
      },
      it: {
        'vite senza fine, ingranaggio, pignone, ruota dentata, corona dentata, ingranaggi, ruota elicoidale, corona, ingranaggio conico, ruota a vite, planetario, satellite, solare':
          {},
      },
      es: {
        'tornillo sin fin, engranaje, pinon, rueda dentada, corona, engranajes, rueda helicoidal, engranaje conico, corona dentada, planetario, satelite':
          {},
      },
      nl: { 'tandwiel, rondsel, tandwielen, wormwiel, kegeltandwiel, kroonwiel, pignon': {} },
      ja: {
        'ギア, ギヤ, ピニオン, 歯車, ドライブギア, ドライブギヤ, ウォームギア, マスターギア, ピニオンギア, ピニオンギヤ, ウォームホイール, ウォーム':
          {},
      },
    },
    plain: {
      en: 'gear case, gear box, gearbox, gear cover, gear housing, gear puller, gear motor, gearmotor, gear shift, gear lever, gear oil pump, gear knob, gear plate, gear train, worm clamp, worm drive clamp, gear selector, gear cable, gear holder, gear guard, landing gear, gear rack',
      de: 'planetenträger, getriebegehäuse, zahnradabdeckung, zahnradkasten, zahnradpumpe, schneckengehäuse',
      fr: "carter d'engrenage, porte satellites, porte satellite, cage de satellites",
      it: 'portasatelliti, porta satelliti, sostegno satelliti',
      es: 'portasatelites, porta satelites',
      nl: 'planeetdrager',
      ja: 'ギアケース, ギヤケース, ギアボックス, ギヤボックス, ギアカバー',
    },
  },
  standards: attributesOf('gear'),
  stems: [],
  settle,
  write: (dims: Dims) =>
    typeof dims['module'] === 'number' &&
    typeof dims['teeth'] === 'number' &&
    dims['module'] > 0 &&
    dims['teeth'] > 0
      ? `${dims['module']}x${dims['teeth']}`
      : null,
  parse: text => {
    const parts = /^(\d+(?:\.\d{1,3})?)x(\d{1,3})$/.exec(text);
    return parts && Number(parts[1]) > 0 && Number(parts[2]) > 0
      ? { dims: { module: Number(parts[1]), teeth: Number(parts[2]) }, implied: {} }
      : null;
  },
  sizes: [],
  designations: () => [],
  drawing: drawGear,
  examples: [
    ['GEAR 20T MODULE 1', 'gear 1x20'],
    ['Zahnrad Modul 0,5, 40 Zähne', 'gear 0.5x40'],
    ['Spur gear 24 teeth, bore 5 mm', { size: null, dims: { teeth: 24, bore: 5 } }],
    ['PINION GEAR', { size: null, dims: {} }],
    ['Pignon 12 dents', { dims: { teeth: 12 } }],
    ['Satellite 10 dents', { dims: { teeth: 10 } }],
    ['Planetario', { size: null, dims: {} }],
    ['GEAR CASE', undefined],
    ['Porte-satellites', undefined],
    ['Getriebegehäuse', undefined],
  ],
};
