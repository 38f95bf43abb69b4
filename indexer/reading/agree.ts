type Value = string | boolean;

/** Values that say the same more exactly, by the general one they narrow: a socket head may be a low, button or countersunk one. */
const finer: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  head: {
    'socket-cap': ['low-socket-cap', 'button', 'countersunk', 'shoulder'],
    countersunk: ['raised-countersunk'],
    hex: ['hex-flange', 'shoulder'],
    cylinder: ['socket-cap', 'low-socket-cap', 'cheese'],
    dome: ['button', 'pan', 'truss', 'round', 'raised-countersunk'],
    round: ['button', 'pan', 'truss', 'thumb', 'raised-countersunk'],
    cheese: ['pan', 'thumb'],
  },
  seal: {
    'two-shields': ['one-shield'],
    'two-contact-seals': ['one-contact-seal', 'one-non-contact-seal', 'two-non-contact-seals'],
    'one-contact-seal': ['one-non-contact-seal'],
  },
  material: {
    steel: ['stainless'],
    plastic: ['nylon', 'pom', 'ptfe'],
    rubber: ['nitrile', 'fkm', 'silicone'],
  },
  type: {
    hex: ['lock', 'cap', 'castle', 'flange', 'jam', 'square', 't-nut'],
    flat: ['spring', 'lock', 'star', 'wave', 'thrust'],
    external: ['e-clip', 'r-clip'],
  },
};

/** Attributes of which a part has one: two different values in a line contradict each other. */
const single = new Set(['head', 'drive', 'seal', 'clearance', 'grade', 'hand', 'side', 'point']);

/** Kinds of one part that exclude each other; other kinds may be said together, the noun's first. */
const excluding: readonly (readonly string[])[] = [
  ['internal', 'external'],
  ['compression', 'extension', 'torsion'],
];

/** Whether the second value says the same as the first more exactly. */
export const narrows = (key: string, general: Value, fine: Value): boolean =>
  finer[key]?.[String(general)]?.includes(String(fine)) ?? false;

/** How two stated values of one attribute go together. */
export type Agreement = { kept: Value } | 'contradict';

/**
 * Brings two stated values of one attribute together: the finer of two that agree, the first of two that may stand side by
 * side, or a contradiction.
 */
export function agree(key: string, first: Value, second: Value): Agreement {
  if (first === second) return { kept: first };
  if (narrows(key, first, second)) return { kept: second };
  if (narrows(key, second, first)) return { kept: first };
  const excluded =
    single.has(key) ||
    excluding.some(kinds => kinds.includes(String(first)) && kinds.includes(String(second)));
  return excluded ? 'contradict' : { kept: first };
}
