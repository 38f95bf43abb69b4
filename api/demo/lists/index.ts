import { dunscarS } from './dunscar-s.ts';
import { holmgate6 } from './holmgate-6.ts';
import { marrick4 } from './marrick-4.ts';
import { penhale90 } from './penhale-90.ts';
import { skerry25 } from './skerry-25.ts';
import { skerry40 } from './skerry-40.ts';
import { ullock20 } from './ullock-20.ts';

/** The demo bench's sheets: invented makers and models that share sizes under different numbers, with near-misses. */
export const demoLists = [skerry25, skerry40, holmgate6, marrick4, penhale90, ullock20, dunscarS] as const;
