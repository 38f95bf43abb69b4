import type { Attrs, Dims } from '../../reading/reading.ts';
import { type Driver, driverOf } from '../../standards/drivers.ts';
import { inchHexKey } from '../../standards/hex-keys.ts';
import { screwHead } from '../../standards/screw-heads.ts';
import { toMm } from '../../units/length.ts';
import { distinctTools, inchMark, type Tool } from '../tool.ts';

interface Form {
  head: string;
  drive: string;
  standard: string;
}

/** The standards whose tools stand for a head with a drive, the commonest first. */
const forms: readonly Form[] = [
  { head: 'socket-cap', drive: 'hex-socket', standard: 'ISO 4762' },
  { head: 'low-socket-cap', drive: 'hex-socket', standard: 'DIN 7984' },
  { head: 'button', drive: 'hex-socket', standard: 'ISO 7380-1' },
  { head: 'countersunk', drive: 'hex-socket', standard: 'ISO 10642' },
  { head: 'pan', drive: 'phillips', standard: 'ISO 7045' },
  { head: 'countersunk', drive: 'phillips', standard: 'ISO 7046-1' },
  { head: 'raised-countersunk', drive: 'phillips', standard: 'ISO 7047' },
  { head: 'cheese', drive: 'phillips', standard: 'ISO 7048' },
  { head: 'socket-cap', drive: 'torx', standard: 'ISO 14579' },
  { head: 'cheese', drive: 'torx', standard: 'ISO 14580' },
  { head: 'countersunk', drive: 'torx', standard: 'ISO 14581' },
  { head: 'pan', drive: 'torx', standard: 'ISO 14583' },
  { head: 'cheese', drive: 'slotted', standard: 'ISO 1207' },
  { head: 'pan', drive: 'slotted', standard: 'ISO 1580' },
  { head: 'countersunk', drive: 'slotted', standard: 'ISO 2009' },
  { head: 'raised-countersunk', drive: 'slotted', standard: 'ISO 2010' },
  { head: 'hex', drive: 'hex', standard: 'ISO 4017' },
];

const inchHeads: Readonly<Record<string, 'cap' | 'button' | 'flat'>> = {
  'socket-cap': 'cap',
  button: 'button',
  countersunk: 'flat',
};

/**
 * What turns a screw: hexagon key (ISO 2936), cross recess (ISO 4757), hexalobular size (ISO 10664), blade, spanner, by the
 * standard that is printed, else by its head and drive. Where head or drive is not stated, what each form would take,
 * with the form named. Empty for a thread that no table has.
 */
export function tools({ thread }: Dims, attrs: Attrs): Tool[] {
  if (typeof thread !== 'string') return [];
  const printed = typeof attrs.standard === 'string' ? ofStandard(attrs.standard, thread, attrs, null) : null;
  if (printed) return [printed];
  const drive = attrs.drive === 'pozidriv' ? 'phillips' : attrs.drive;
  const meant = forms.filter(
    form => (!attrs.head || form.head === attrs.head) && (!drive || form.drive === drive),
  );
  const settled = meant.length === 1 || (attrs.head !== undefined && attrs.drive !== undefined);
  return distinctTools(
    meant.flatMap(form => {
      const when = settled ? null : whenWords(form, attrs);
      return ofStandard(form.standard, thread, attrs, when) ?? ofInch(form, thread, when) ?? [];
    }),
  );
}

/** The form in words, without what is stated already. */
function whenWords({ head, drive }: Form, attrs: Attrs): string {
  const words = [attrs.head ? '' : `${head.replaceAll('-', ' ')} head`, attrs.drive ? '' : drive];
  return words
    .filter(word => word && word !== 'hex')
    .join(', ')
    .replace('hex-socket', 'hexagon socket');
}

const kinds: Readonly<Record<Driver['drive'], string>> = {
  'hex-socket': 'hex key',
  phillips: 'cross driver',
  pozidriv: 'cross driver',
  torx: 'hexalobular driver',
  slotted: 'blade',
};

function ofStandard(standard: string, thread: string, attrs: Attrs, when: string | null): Tool | null {
  const flats = screwHead(standard, thread)?.sMax;
  if (flats) return { kind: 'spanner', size: String(toMm(flats)), when, source: standard };
  const driver = driverOf(standard, thread, attrs.drive === 'pozidriv');
  return driver ? { kind: kinds[driver.drive], size: driver.mark, when, source: standard } : null;
}

/** An inch socket screw's key, as the fraction it is marked with. */
function ofInch({ head, drive }: Form, thread: string, when: string | null): Tool | null {
  const form = inchHeads[head];
  const [size] = /^\d+(?:\/\d+)?(?=-\d)/.exec(thread) ?? [];
  const key = drive === 'hex-socket' && form && size ? inchHexKey(form, size) : undefined;
  return key === undefined
    ? null
    : { kind: 'hex key', size: inchMark(key), when, source: 'ASME B18.3, from memory' };
}
