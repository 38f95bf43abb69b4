import type { Claim } from '../reading/claim.ts';
import type { Line } from '../reading/line.ts';
import type { Measure } from '../reading/measures.ts';
import type { PrintedOrder } from '../reading/reading.ts';
import type { LabelMeanings } from './definition.ts';
import { giveLabelled, unlabelledGroups } from './settle-labels.ts';

/** The three names a ring-shaped part gives to inside, outside and what lies between its faces. */
export interface RingKeys {
  inside: string;
  outside: string;
  across: string;
  /** A size alone says nothing unless it has a Ø or is so small that it is a thickness. */
  lone?: 'thin';
}

/** What a label means on a flat ring: a washer, a shim, a seal. */
export const flatRingLabels: LabelMeanings = {
  id: 'id',
  bore: 'id',
  d: 'id',
  D: 'od',
  od: 'od',
  dia: 'od',
  thickness: 'thickness',
  height: 'thickness',
  width: 'thickness',
};

/** Whether three sizes, as inside, outside, across, are a published part of the category. */
export type IsListed = (inside: Measure, outside: Measure, across: Measure) => boolean;

type Order = readonly [inside: number, outside: number, across: number];

/** Orders seen in print, the usual first. */
const orders: readonly Order[] = [
  [0, 1, 2],
  [1, 0, 2],
  [0, 2, 1],
  [2, 0, 1],
  [1, 2, 0],
  [2, 1, 0],
];

const isUsual = (order: Order) => order === orders[0] || order === orders[1];

const possible = (sizes: readonly Measure[], [inside, outside]: Order) =>
  sizes[inside]!.um < sizes[outside]!.um;

/** What a printed order says of the first, second and third size. */
function orderOf(printed: PrintedOrder): Order {
  const roles = printed.split(' ');
  return [roles.indexOf('inside'), roles.indexOf('outside'), roles.indexOf('across')];
}

/** Which of three printed sizes is which, and whether a person should look. */
interface RingOrder {
  order: Order;
  doubt: string | null;
  listed: boolean;
}

/**
 * The order in which a document prints its rings, where these sizes can be meant so: inside, outside and across fit, and no
 * other order alone is published. Null where they can't.
 */
function orderTaught(
  sizes: readonly Measure[],
  isListed: IsListed,
  printed: PrintedOrder,
  mayBeLong: boolean,
): RingOrder | null {
  const order = orderOf(printed);
  if (!possible(sizes, order)) return null;
  const [inside, outside, across] = order.map(at => sizes[at]!) as [Measure, Measure, Measure];
  if (across.um > outside.um && !mayBeLong) return null;
  const listed = isListed(inside, outside, across);
  return listed || !orderRing(sizes, isListed).listed ? { order, doubt: null, listed } : null;
}

/** Which of three printed sizes is which, judged by the line alone. */
function orderRing(sizes: readonly Measure[], isListed: IsListed): RingOrder {
  // Only whether one or more orders are published matters, so the search ends with the second.
  let first: Order | undefined;
  let only = true;
  for (const order of orders) {
    if (!possible(sizes, order) || !isListed(sizes[order[0]]!, sizes[order[1]]!, sizes[order[2]]!)) continue;
    if (first) {
      only = false;
      break;
    }
    first = order;
    if (isUsual(order)) break;
  }
  const [a, b, c] = [sizes[0]!.um, sizes[1]!.um, sizes[2]!.um];
  if (first && (only || isUsual(first)))
    return {
      order: first,
      listed: true,
      doubt: isUsual(first) ? null : 'sizes printed in an unusual order; read as the only published size',
    };
  if (a < b) {
    if (c > b) return { order: orders[0]!, listed: false, doubt: null };
    return { order: orders[0]!, listed: false, doubt: null };
  }
  if (a > b && b > 0) {
    // The outside first. Of the other two the smaller lies across, unless the last is as large as the first.
    if (c >= a)
      return {
        order: orders[1]!,
        listed: false,
        doubt: 'the order of the sizes does not tell which is which',
      };
    return b >= c
      ? { order: orders[1]!, listed: false, doubt: null }
      : {
          order: orders[1]!,
          listed: false,
          doubt: 'outside diameter printed first: bore and width could be the other way round',
        };
  }
  return { order: orders[0]!, listed: false, doubt: 'inside and outside diameter are printed the same' };
}

/** Settles inside, outside and across of a ring-shaped part from labels and groups. */
export function settleRing(
  claim: Claim,
  line: Line,
  keys: RingKeys,
  labels: LabelMeanings,
  isListed: IsListed = () => false,
): void {
  const used = giveLabelled(claim, line, labels);
  const { inside, outside, across } = keys;
  for (const group of unlabelledGroups(line, used)) {
    if (group.threaded) continue;
    const open = [inside, outside, across].filter(key => !claim.has(key));
    if (open.length === 0) break;
    const { measures } = group;
    if (measures.length === 3 && open.length === 3) {
      const alone = orderRing(measures, isListed);
      const printed = line.orders?.[claim.category];
      const taught = printed ? orderTaught(measures, isListed, printed, claim.category === 'bushing') : null;
      const { order, doubt, listed } = taught ?? alone;
      claim.measure(inside, measures[order[0]]!);
      claim.measure(outside, measures[order[1]]!);
      claim.measure(across, measures[order[2]]!);
      claim.features.add('three-sizes');
      if (listed) claim.features.add('listed');
      if (order[1] === 0) claim.notes.push('outside diameter printed first');
      if (taught && (alone.doubt || String(alone.order) !== String(order)))
        line.taught.push(
          `read as ${printed!.replaceAll(' ', ' × ')}, the order in which this list prints its sizes`,
        );
      if (doubt) claim.doubt(doubt);
      break;
    }
    if (measures.length === 2 && open.length >= 2) settlePair(claim, measures, open, keys);
    else if (measures.length === 2 && open.length === 1 && !group.joined) continue;
    else if (measures.length === 1) settleOne(claim, measures[0]!, open, keys);
    else if (measures.length > 3) {
      claim.doubt('more sizes than this part has');
      break;
    }
    if (group.joined) {
      giveAcross(claim, line, used, across);
      break;
    }
  }
  const [i, o, t] = [inside, outside, across].map(key => claim.lengths.get(key));
  if (
    t !== undefined &&
    o !== undefined &&
    t > o &&
    claim.category !== 'bushing' &&
    claim.category !== 'roller-clutch' &&
    claim.attrs['type'] !== 'linear' &&
    claim.attrs['type'] !== 'needle'
  ) {
    claim.doubt('wider than its outside diameter');
  }
  if (i !== undefined && o !== undefined && o <= i) {
    claim.doubt('the outside diameter is not larger than the inside');
    claim.features.add('contradiction');
  }
}

/** Beside inside and outside printed together a size with its unit is how thick: 6x10, 0.1 mm. */
function giveAcross(claim: Claim, line: Line, used: ReadonlySet<Measure>, across: string): void {
  if (claim.has(across)) return;
  const lone = unlabelledGroups(line, used).filter(g => !g.joined && !g.threaded);
  const [size] = lone[0]?.measures ?? [];
  if (lone.length === 1 && size?.unitStated) claim.measure(across, size);
}

/** Two sizes: inside and outside, or the two that labels left open, in that order. */
function settlePair(claim: Claim, pair: readonly Measure[], open: readonly string[], keys: RingKeys): void {
  const [first, second] = pair as [Measure, Measure];
  claim.features.add('two-sizes');
  if (open.includes(keys.inside) && open.includes(keys.outside)) {
    const swapped = first.um > second.um;
    claim.measure(keys.inside, swapped ? second : first);
    claim.measure(keys.outside, swapped ? first : second);
    if (swapped) {
      claim.notes.push('outside diameter printed first');
      claim.features.add('swapped');
    }
    return;
  }
  claim.measure(open[0]!, first);
  claim.measure(open[1]!, second);
}

/** A single size: a Ø or a plain number is the inside diameter, unless it is known already. */
function settleOne(claim: Claim, size: Measure, open: readonly string[], keys: RingKeys): void {
  claim.features.add('one-size');
  if (claim.attrs['type'] === 'gasket') return;
  if (keys.lone && open.length === 3 && size.um > 1_000 && !size.diameter) {
    claim.features.add('loose-size');
    return;
  }
  if (open.length === 3 || open.length === 1)
    claim.measure(open.includes(keys.inside) ? keys.inside : open[0]!, size);
  else claim.features.add('loose-size');
}

/** A lone small size of a flat ring is its thickness: nobody's hole is a tenth of a millimetre. */
export function loneThickness(claim: Claim): void {
  const id = claim.lengths.get('id');
  if (id === undefined || id > 1_000 || claim.has('od') || claim.has('thickness')) return;
  claim.lengths.delete('id');
  claim.lengths.set('thickness', id);
  for (const span of claim.spans) if (span.field === 'id') span.field = 'thickness';
}
