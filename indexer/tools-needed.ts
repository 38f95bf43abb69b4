import { categories } from './categories/index.ts';
import type { Tool } from './categories/tool.ts';
import type { Attrs, CategoryName, Dims, ReadAs } from './reading/reading.ts';

/** A part of a machine, as its list gives it. */
export interface PartOfMachine {
  /** What it is called on the list: its reference number. */
  ref: string;
  category: ReadAs;
  dims: Dims;
  attrs: Attrs;
}

/** A tool as it is marked, and where it is needed. */
export interface ToolNeeded {
  kind: string;
  size: string;
  source: string;
  refs: string[];
}

export interface ToolsNeeded {
  /** What the list settles. */
  tools: ToolNeeded[];
  /** Parts of which head, drive or type is not stated: one of these tools will do, and the list does not say which. */
  either: { refs: string[]; tools: Pick<Tool, 'kind' | 'size'>[] }[];
  /** Fasteners and rings of which not even the size is known. */
  unknown: string[];
  /** Threads that the list says are left-hand. */
  leftHand: string[];
  /** How many threaded parts the list says nothing of their hand. */
  handNotStated: number;
}

const inOrder = new Intl.Collator('en', { numeric: true });
const threaded: ReadonlySet<string> = new Set<CategoryName>(['screw', 'set-screw', 'nut']);

/**
 * The tools that the parts of a machine take, from the standards of their sizes, kind by kind. What a list does
 * not settle is said beside it, never guessed.
 */
export function toolsNeeded(parts: readonly PartOfMachine[]): ToolsNeeded {
  const settled = new Map<string, ToolNeeded>();
  const open = new Map<string, ToolsNeeded['either'][number]>();
  const unknown: string[] = [];
  for (const { ref, category, dims, attrs } of parts) {
    const toolsOf = categories.get(category as CategoryName)?.tools;
    if (!toolsOf) continue;
    const tools = toolsOf(dims, attrs);
    if (tools.length === 0) unknown.push(ref);
    else if (tools.some(tool => tool.when !== null)) {
      const each = distinct(tools);
      const known = entry(open, JSON.stringify(each), () => ({ refs: [], tools: each }));
      known.refs.push(ref);
    } else
      for (const { kind, size, source } of tools)
        entry(settled, `${kind} ${size}`, () => ({ kind, size, source, refs: [] })).refs.push(ref);
  }
  const threads = parts.filter(part => threaded.has(part.category));
  return {
    tools: [...settled.values()].sort((a, b) =>
      inOrder.compare(`${a.kind} ${a.size}`, `${b.kind} ${b.size}`),
    ),
    either: [...open.values()].sort((a, b) => b.refs.length - a.refs.length),
    unknown,
    leftHand: threads.filter(part => part.attrs.hand === 'left').map(part => part.ref),
    handNotStated: threads.filter(part => part.attrs.hand === undefined).length,
  };
}

const distinct = (tools: readonly Tool[]) => [
  ...new Map(tools.map(({ kind, size }) => [`${kind} ${size}`, { kind, size }])).values(),
];

function entry<Value>(map: Map<string, Value>, key: string, make: () => Value): Value {
  const known = map.get(key) ?? make();
  map.set(key, known);
  return known;
}
