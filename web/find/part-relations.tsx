import { Link } from 'wouter';
import type { PartAnswer } from '../../api/answers/index.ts';
import { SizeLink } from '../part/size.tsx';
import { Section } from '../ui/sheet.tsx';

/** Where the maker's numbers lead: the maker's word, never ours. */
export function Succession({ part }: { part: PartAnswer }) {
  const { links, current, asks, replaces } = part.supersession;
  if (links.length === 0 && replaces.length === 0) return null;
  return (
    <Section title="Replaced by" aside="the maker's word">
      <ul className="rows">
        {links.map(link => (
          <li key={`${link.from} ${link.to}`}>
            <span className="fig">{link.from}</span> by{' '}
            {link.part ? (
              <Link className="fig" href={`/parts/${link.part}`}>
                {link.to}
              </Link>
            ) : (
              <span className="fig">{link.to}</span>
            )}
            {link.serialFrom || link.serialTo ? (
              <span className="label">
                {' '}
                serial {link.serialFrom ?? '…'} to {link.serialTo ?? '…'}
              </span>
            ) : null}
          </li>
        ))}
      </ul>
      {current ? (
        <p>
          Order <b className="fig">{current}</b>.
        </p>
      ) : null}
      {asks ? <p className="look-here">{asks}</p> : null}
      {replaces.length > 0 ? (
        <p>
          It replaces <span className="fig">{replaces.join(', ')}</span>.
        </p>
      ) : null}
    </Section>
  );
}

/** Parts that ship with it, or that it ships with. */
export function Assembly({ title, parts }: { title: string; parts: PartAnswer['includes'] }) {
  if (parts.length === 0) return null;
  return (
    <Section title={title}>
      <ul className="rows">
        {parts.map(part => (
          <li key={part.id}>
            <Link href={`/parts/${part.id}`}>
              <span className="fig">{part.number}</span> {part.name}
            </Link>{' '}
            {part.size ? <SizeLink size={part.size} /> : null}
          </li>
        ))}
      </ul>
    </Section>
  );
}
