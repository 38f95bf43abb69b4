import { attributesOf } from '../standards/part-standards.ts';
import { mm } from '../units/length.ts';
import type { CategoryDefinition } from './definition.ts';
import { drawRing } from './draw-ring.ts';
import { flatRingLabels, loneThickness, settleRing } from './settle-ring.ts';
import { plainSize } from './size-text.ts';

const gasket = { type: 'gasket' };
const labels = { ...flatRingLabels, length: 'thickness' };

/** Rotary shaft seals in the commonest small sizes (DIN 3760), from memory. */
const sizes = [
  [6, 16, 7],
  [8, 16, 5],
  [8, 22, 7],
  [10, 20, 5],
  [10, 22, 7],
  [12, 22, 7],
  [15, 30, 7],
  [17, 28, 7],
  [20, 35, 7],
] as const;

export const seal: CategoryDefinition = {
  name: 'seal',
  title: 'Seal',
  plural: 'Seals',
  dims: [
    { key: 'id', label: 'shaft', diameter: true, unit: 'mm', limits: [mm(0.5), mm(300)], near: [2, 0.2] },
    { key: 'od', label: 'outside', diameter: true, unit: 'mm', limits: [mm(1), mm(400)], near: [2, 0.2] },
    { key: 'thickness', label: 'width', unit: 'mm', limits: [mm(0.1), mm(60)], near: [2, 0.4] },
  ],
  sizeDims: ['id', 'od', 'thickness'],
  itemAttrs: ['type', 'material'],
  labels,
  words: {
    nouns: {
      en: {
        'seal, oil seal, lip seal, shaft seal, rotary seal, rotary shaft seal, seals, dust seal, water seal, grease seal, packing, packing ring, seal ring, sealing ring, v-ring, radial shaft seal, drain plug seal, wiper seal':
          {},
        'felt seal, felt ring, felt packing': { material: 'felt' },
        'gasket, gaskets, gskt, paper gasket, head gasket, cover gasket': gasket,
      },
      de: {
        'filzring, filzdichtung': { material: 'felt' },
        'dichtung, dichtring, wellendichtring, radialwellendichtring, simmerring, lippendichtung, dichtungsring, simmering, abstreifer, staubdichtung, wellendichtung, gummidichtung, nutring':
          {},
        'flachdichtung, gehäusedichtung, deckeldichtung, papierdichtung': gasket,
      },
      fr: {
        "joint a levre, joint spi, joint d'arbre, bague d'etancheite, joint d'etancheite, joint feutre, bague feutre, joint":
          {},
        'joint plat, joint papier, joint de carter, joint de culasse': gasket,
      },
      it: {
        'paraolio, anello di tenuta, tenuta, guarnizione a labbro, anello di feltro, anello paraolio, tenute':
          {},
        'guarnizione, guarnizioni, guarnizione piana': gasket,
      },
      es: {
        'reten, sello, reten de aceite, junta de labio, sello de aceite, anillo de fieltro, retenes': {},
        'junta, juntas, empaquetadura, junta plana': gasket,
      },
      nl: {
        'keerring, oliekeerring, afdichting, afdichtring, simmerring, viltring': {},
        'pakking, vlakke pakking': gasket,
      },
      ja: {
        'シール, オイルシール, パッキン, フェルトリング, シールリング, Vリング, ダストシール, 防水シール': {},
        ガスケット: gasket,
      },
    },
    modifiers: { en: { gasket } },
    plain: {
      en: 'seal plate, seal retainer, seal holder, seal kit, gasket sealant, seal cover, seal housing, gasket set, gasket kit, gasket maker',
      de: 'dichtungssatz, dichtungsträger',
      fr: 'joint de cardan, joint tournant, joint universel',
      ja: 'シールプレート',
    },
  },
  standards: attributesOf('seal'),
  stems: [],
  settle: (claim, line) => {
    settleRing(claim, line, { inside: 'id', outside: 'od', across: 'thickness', lone: 'thin' }, labels);
    if (claim.attrs['type'] === 'gasket')
      for (const m of line.measures)
        if (m.label === null && m.um < 1_500 && !claim.has('id')) claim.measure('thickness', m);
    loneThickness(claim);
  },
  ...plainSize('id', 'od', 'thickness'),
  sizes: sizes.map(([id, od, thickness]) => ({ id: mm(id), od: mm(od), thickness: mm(thickness) })),
  designations: () => [],
  drawing: drawRing({ inside: 'id', outside: 'od', across: 'thickness' }),
  examples: [
    ['OIL SEAL 10X20X5', 'seal 10x20x5'],
    ['Wellendichtring 8x22x7 NBR', { size: 'seal 8x22x7', attrs: { material: 'nitrile' } }],
    ['Gasket, cover', { size: null, attrs: { type: 'gasket' } }],
    ['Retén 15x30x7', 'seal 15x30x7'],
    ['オイルシール 12x22x7', 'seal 12x22x7'],
    ['Gasket sealant', undefined],
  ],
};
