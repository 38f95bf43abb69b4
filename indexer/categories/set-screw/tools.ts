import type { Attrs, Dims } from '../../reading/reading.ts';
import { hexKey, inchHexKey } from '../../standards/hex-keys.ts';
import { toMm } from '../../units/length.ts';
import { inchMark, type Tool } from '../tool.ts';

/** The hexagon key of a set screw (ISO 4026 to 4029; inch by ASME B18.3); none for a slotted one, whose blade no table has. */
export function tools({ thread }: Dims, { drive }: Attrs): Tool[] {
  if (typeof thread !== 'string' || (drive !== undefined && drive !== 'hex-socket')) return [];
  const when = drive === undefined ? 'hexagon socket' : null;
  const key = hexKey('ISO 4026', thread);
  if (key !== undefined)
    return [{ kind: 'hex key', size: `${toMm(key)} mm`, when, source: 'ISO 4026 to 4029' }];
  const [size] = /^\d+(?:\/\d+)?(?=-\d)/.exec(thread) ?? [];
  const inches = size ? inchHexKey('set', size) : undefined;
  return inches === undefined
    ? []
    : [{ kind: 'hex key', size: inchMark(inches), when, source: 'ASME B18.3, from memory' }];
}
