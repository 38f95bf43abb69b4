import type { CategoryDefinition } from './definition.ts';

export const lubricant: CategoryDefinition = {
  name: 'lubricant',
  title: 'Lubricant',
  plural: 'Lubricants',
  dims: [],
  sizeDims: [],
  itemAttrs: ['material'],
  labels: {},
  words: {
    nouns: {
      en: {
        'grease, oil, lubricant, lube, lubricating oil, reel oil, drag grease, gear oil, gear grease, lithium grease, silicone grease, ptfe grease, bearing oil, bearing grease, sewing machine oil, machine oil, dry lube, ptfe lube, silicone oil, moly grease, anti-seize, antiseize, molybdenum grease, spindle oil, chain oil, silicone lubricant, graphite powder, lubricating grease, ptfe spray, silicone spray, oil spray, lubricant spray, dry lube spray':
          {},
      },
      de: {
        'fett, öl, schmierfett, schmieröl, schmiermittel, schmierstoff, rollenöl, rollenfett, getriebefett, getriebeöl, lagerfett, silikonfett, maschinenöl, nähmaschinenöl, mehrzweckfett, lithiumfett, montagepaste, kettenöl':
          {},
      },
      fr: {
        'graisse, huile, lubrifiant, graisse silicone, huile de lubrification, huile a moulinet, graisse au lithium, huile machine a coudre':
          {},
      },
      it: {
        'grasso, olio, lubrificante, grasso al litio, olio lubrificante, grasso siliconico, olio per mulinelli':
          {},
      },
      es: {
        'grasa, aceite, lubricante, grasa de litio, aceite lubricante, grasa de silicona, aceite de maquina':
          {},
      },
      nl: { 'vet, olie, smeermiddel, smeervet, smeerolie, siliconenvet, naaimachineolie, lagervet': {} },
      ja: { 'グリス, グリース, オイル, 潤滑油, 潤滑剤, シリコングリス': {} },
    },
    plain: {
      en: 'oil cap, oil cup, oil seal cap, oil pump, oil filter, oil can, grease gun, grease nipple, grease fitting, oil hole cover, oil port cap, oil pan, oil drain plug, oil level, oiler, grease cap, oil tank, oil hole, oil port, oil wick, oil gauge, grease cup, oil line, lube port, oil plug, oil hole cap, oil slinger, oil sight glass',
      de: 'ölfilter, ölpumpe, fettpresse, schmiernippel, öldeckel, ölwanne, ölkanne, ölablassschraube, ölverschluss, ölschauglas, ölmessstab',
      fr: "graisseur, pompe a huile, filtre a huile, bouchon d'huile",
      it: 'ingrassatore, pompa olio, filtro olio, tappo olio',
      es: 'engrasador, filtro de aceite, bomba de aceite, tapon de aceite',
      nl: 'smeernippel, oliefilter, vetnippel, oliepomp',
      ja: 'オイルキャップ, オイル穴, オイルポンプ, グリスニップル, オイルポート',
    },
  },
  standards: {},
  stems: [],
  settle: () => {},
  write: () => null,
  parse: () => null,
  sizes: [],
  designations: () => [],
  examples: [
    ['GREASE', { size: null }],
    ['Reel oil 20 ml', { size: null, dims: {} }],
    ['Silikonfett 50 g', { size: null, dims: {} }],
    ['Oil filter', undefined],
    ['Graisse', { size: null }],
  ],
};
