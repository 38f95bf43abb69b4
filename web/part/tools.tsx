import type { Tool } from '../../indexer/index.ts';

/** The tools a part takes, as a row of its facts; with the form named where the part leaves it open. */
export function ToolFacts({ tools }: { tools: readonly Tool[] }) {
  if (tools.length === 0) return null;
  const open = tools.some(tool => tool.when !== null);
  return (
    <div>
      <dt>Tools</dt>
      <dd>
        {open ? <span className="label">Not stated which; these would: </span> : null}
        <ul className="tools">
          {tools.map(({ kind, size, when, source }) => (
            <li key={`${kind} ${size} ${when}`}>
              {kind} <b className="fig">{size}</b> <span className="label">{when ?? source}</span>
            </li>
          ))}
        </ul>
      </dd>
    </div>
  );
}
