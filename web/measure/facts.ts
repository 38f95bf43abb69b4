import type { CategoryName } from '../../indexer/index.ts';

/** Something that is seen on a part and narrows what it can be. */
export interface Fact {
  attr: string;
  label: string;
  values: readonly string[];
}

/** What is worth a look, by kind of part: what the tables of its sizes tell apart. */
export const factsOf: Partial<Record<CategoryName, readonly Fact[]>> = {
  screw: [
    {
      attr: 'head',
      label: 'Head',
      values: [
        'pan',
        'countersunk',
        'raised-countersunk',
        'cheese',
        'socket-cap',
        'low-socket-cap',
        'button',
        'hex',
      ],
    },
  ],
  'set-screw': [{ attr: 'point', label: 'Point', values: ['flat', 'cone', 'dog', 'cup'] }],
  nut: [{ attr: 'type', label: 'Kind', values: ['hex', 'jam', 'lock', 'square', 'cap', 'castle', 'flange'] }],
  bearing: [
    {
      attr: 'type',
      label: 'Kind, if not with balls between two rings',
      values: ['needle', 'thrust', 'linear'],
    },
    {
      attr: 'seal',
      label: 'Sides',
      values: ['open', 'one-shield', 'two-shields', 'one-contact-seal', 'two-contact-seals'],
    },
  ],
  washer: [{ attr: 'type', label: 'Kind', values: ['flat', 'spring', 'star'] }],
  'retaining-ring': [{ attr: 'type', label: 'Kind', values: ['external', 'internal', 'e-clip'] }],
  pin: [{ attr: 'type', label: 'Kind', values: ['dowel', 'spring', 'cotter', 'taper'] }],
  spring: [
    { attr: 'material', label: 'Material', values: ['steel', 'stainless', 'bronze', 'brass'] },
    { attr: 'ends', label: 'Ends', values: ['closed', 'open', 'closed-ground', 'double-closed'] },
  ],
};
