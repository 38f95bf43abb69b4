import { Link } from 'wouter';
import type { Found } from '../../api/answers/index.ts';
import { Section } from '../ui/sheet.tsx';

interface PageHitsProps {
  pages: Found['pages'];
  q: string;
}

/** Pages of diagrams on which the words are written; each opens at the place. */
export function PageHits({ pages, q }: PageHitsProps) {
  if (pages.length === 0) return null;
  return (
    <Section title="Written on a page" aside={pages.length}>
      <ul className="rows">
        {pages.map(({ diagram, name, page, text, model }) => (
          <li key={`${diagram} ${page}`} className="model-hit">
            <Link
              href={`/diagrams/${diagram}?${new URLSearchParams({ page: String(page), find: q.trim() })}`}
            >
              {model.maker.name} {model.name}, page {page}
            </Link>
            <span className="quiet">
              “{text}” <span className="label">{name}</span>
            </span>
          </li>
        ))}
      </ul>
    </Section>
  );
}
