import type { Attrs, Dims } from '../../reading/reading.ts';
import { setScrewSlotOf } from '../../standards/drivers.ts';
import { hexKey, inchHexKey } from '../../standards/hex-keys.ts';
import { toMm } from '../../units/length.ts';
import { inchMark, type Tool } from '../tool.ts';

/**
 * What turns a set screw: hexagon key (ISO 4026 to 4029; inch by ASME B18.3) or blade (ISO 4766). Where the drive is not
 * stated, both.
 */
export function tools({ thread }: Dims, { drive }: Attrs): Tool[] {
  if (typeof thread !== 'string') return [];
  const key = drive === undefined || drive === 'hex-socket' ? keyOf(thread) : undefined;
  const blade = drive === undefined || drive === 'slotted' ? bladeOf(thread) : undefined;
  const open = drive === undefined;
  return [
    ...(key ? [{ ...key, when: open ? 'hexagon socket' : null }] : []),
    ...(blade ? [{ ...blade, when: open ? 'slotted' : null }] : []),
  ];
}

type Turns = Omit<Tool, 'when'>;

function keyOf(thread: string): Turns | undefined {
  const key = hexKey('ISO 4026', thread);
  if (key !== undefined) return { kind: 'hex key', size: `${toMm(key)} mm`, source: 'ISO 4026 to 4029' };
  const [size] = /^\d+(?:\/\d+)?(?=-\d)/.exec(thread) ?? [];
  const inches = size ? inchHexKey('set', size) : undefined;
  return inches === undefined
    ? undefined
    : { kind: 'hex key', size: inchMark(inches), source: 'ASME B18.3, from memory' };
}

function bladeOf(thread: string): Turns | undefined {
  const width = setScrewSlotOf(thread);
  return width === undefined
    ? undefined
    : { kind: 'blade', size: `${toMm(width)} mm`, source: 'ISO 4766, 7434 to 7436, from memory' };
}
