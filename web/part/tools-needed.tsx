import { useQuery } from '@tanstack/react-query';
import type { ModelToolsAnswer } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked } from '../ui/states.tsx';
import { Caution } from './caution.tsx';

/** The tools to lay out before a machine of this model is opened, and what its list does not tell. */
export function ToolsNeeded({ model }: { model: string }) {
  const { bench } = useBench();
  const query = useQuery({
    queryKey: ['model tools', bench?.id, model],
    queryFn: () => api.modelTools(model),
  });
  return (
    <Section title="Tools to lay out" aside="by the standards of its parts">
      <Asked query={query} waiting="Looking up the tools" heading="Tools">
        {answer => <Ready {...answer} />}
      </Asked>
    </Section>
  );
}

function Ready({ tools, either, unknown, leftHand, handNotStated }: ModelToolsAnswer) {
  if (tools.length + either.length + unknown.length === 0)
    return (
      <p>No line of it reads as a fastener or a ring. Read its list, or put the doubtful lines right.</p>
    );
  return (
    <>
      <ul className="rows size-counts">
        {tools.map(({ kind, size, source, refs }) => (
          <li key={`${kind} ${size}`}>
            <span>
              {kind} <b className="fig">{size}</b>
              <span className="label">
                {' '}
                at {refs.join(', ')}; {source}
              </span>
            </span>
          </li>
        ))}
        {either.map(({ refs, tools: may }) => (
          <li key={refs.join(' ')}>
            <span>
              One of {may.map(({ kind, size }) => [kind, size].filter(Boolean).join(' ')).join(', ')}
              <span className="label"> at {refs.join(', ')}: the list does not say which</span>
            </span>
          </li>
        ))}
      </ul>
      {unknown.length > 0 ? (
        <p>
          Not known: {unknown.join(', ')}. {unknown.length === 1 ? 'Its size is' : 'Their sizes are'} not on
          the list.
        </p>
      ) : null}
      {leftHand.length > 0 ? (
        <Caution title={`Left-hand thread at ${leftHand.join(', ')}`}>
          <p>Turn clockwise to undo.</p>
        </Caution>
      ) : null}
      {handNotStated > 0 ? (
        <p className="label">
          Of {handNotStated} {handNotStated === 1 ? 'thread' : 'threads'} the list does not tell the hand: try
          gently both ways.
        </p>
      ) : null}
    </>
  );
}
