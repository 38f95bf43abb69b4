import type { Attrs, Dims } from '../reading/reading.ts';
import { inch } from '../units/length.ts';

/** One tool that a part takes, as it is marked: `hex key 2.5`, `PH1`, `T10`, `spanner 5.5`. */
export interface Tool {
  /** What kind of tool, in a repairer's words. */
  kind: string;
  /** Its size as it is marked; '' where the kind says all. */
  size: string;
  /** For which form, where the part leaves it open: `socket cap head`; null where what is stated decides. */
  when: string | null;
  /** The standard or practice it comes from. */
  source: string;
}

/** The tools of a part; where what decides is not stated, those that each form would take. */
export type ToolsOf = (dims: Dims, attrs: Attrs) => Tool[];

/** Each tool once, in the order given. */
export const distinctTools = (tools: readonly Tool[]): Tool[] => [
  ...new Map(tools.map(tool => [`${tool.kind} ${tool.size} ${tool.when}`, tool])).values(),
];

/** A key's size in micrometres as an inch tool is marked: `5/64 in`, `0.05 in`. */
export function inchMark(key: number): string {
  const parts = Math.round((key / inch(1)) * 64);
  if (Math.abs(inch(parts / 64) - key) > 1) return `${Math.round((key / inch(1)) * 1000) / 1000} in`;
  let [over, under] = [parts, 64];
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return `${over}/${under} in`;
}
