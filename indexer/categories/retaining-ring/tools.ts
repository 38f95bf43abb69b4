import type { Attrs, Dims } from '../../reading/reading.ts';
import type { Tool } from '../tool.ts';

interface Pliers {
  size: number;
  from: number;
  to: number;
}

/** Sizes of pliers for rings on shafts, A0 to A4 of DIN 5254, by the shaft in millimetres; from memory of suppliers' lists. */
const forShafts: readonly Pliers[] = [
  { size: 0, from: 3, to: 10 },
  { size: 1, from: 10, to: 25 },
  { size: 2, from: 19, to: 60 },
  { size: 3, from: 40, to: 100 },
  { size: 4, from: 85, to: 140 },
];
/** Those for rings in bores, J0 to J4 of DIN 5256, by the bore; from memory of suppliers' lists. */
const forBores: readonly Pliers[] = [
  { size: 0, from: 8, to: 13 },
  { size: 1, from: 12, to: 25 },
  { size: 2, from: 19, to: 60 },
  { size: 3, from: 40, to: 100 },
  { size: 4, from: 85, to: 140 },
];

/** Pliers of a ring; an E-clip has no holes for them and is pushed off. Where the type is not stated, all that may be. */
export function tools({ dia }: Dims, { type }: Attrs): Tool[] {
  if (typeof dia !== 'number') return [];
  const of = (pliers: readonly Pliers[], letter: string, standard: string, when: string): Tool[] =>
    pliers
      .filter(({ from, to }) => from <= dia && dia <= to)
      .slice(0, 1)
      .map(({ size }) => ({
        kind: 'ring pliers',
        size: `${letter}${size}`,
        when: type === undefined ? when : null,
        source: `${standard}, from memory`,
      }));
  const lever: Tool = {
    kind: 'clip fork or small blade',
    size: '',
    when: type === undefined ? 'E-clip' : null,
    source: 'common practice',
  };
  return [
    ...(type === undefined || type === 'external' ? of(forShafts, 'A', 'DIN 5254', 'on a shaft') : []),
    ...(type === undefined || type === 'internal' ? of(forBores, 'J', 'DIN 5256', 'in a bore') : []),
    ...(type === undefined || type === 'e-clip' ? [lever] : []),
  ];
}
