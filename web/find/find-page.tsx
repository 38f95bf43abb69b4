import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { Link, useSearchParams } from 'wouter';
import type { Found } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { sizeWords } from '../part/size.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Asked, Empty } from '../ui/states.tsx';
import { PageHits } from './page-hits.tsx';
import { PartHits } from './part-hits.tsx';
import { SizeHits } from './size-hits.tsx';
import { SizeView } from './size-view.tsx';
import { Understood } from './understood.tsx';
import './find.css';

/** What the find box answers: what it understood, then sizes, parts and models. */
export function FindPage() {
  const { bench } = useBench();
  const [search] = useSearchParams();
  const q = (search.get('q') ?? '').trim();
  const query = useQuery({
    queryKey: ['find', bench?.id, q],
    queryFn: () => api.find(q),
    enabled: q !== '',
    // While one types, the answer before stays until the next is there.
    placeholderData: keepPreviousData,
  });
  return (
    <Sheet
      title={q ? `Find: ${q}` : 'Find'}
      cells={[
        { label: 'Bench', value: bench?.name },
        { label: 'Lengths', value: 'mm, first angle' },
      ]}
    >
      {q ? (
        <Asked query={query} waiting={`Looking for ${q}`} heading={`Find: ${q}`}>
          {found => <Answer found={found} q={found.query} />}
        </Asked>
      ) : (
        <NothingAsked />
      )}
    </Sheet>
  );
}

const examples = ['5x11x4', 'M3x8 pan', 'MR115ZZ', 'O-ring 9.25x1.78', 'circlip 8'];

function NothingAsked() {
  return (
    <>
      <h1 className="only-heard">Find</h1>
      <Empty
        title="Find a part by its number, its model, its size, or a line of a list."
        action={
          <ul className="examples" aria-label="Examples">
            {examples.map(each => (
              <li key={each}>
                <Link className="button thin" href={`/find?q=${encodeURIComponent(each)}`}>
                  <span className="fig">{each}</span>
                </Link>
              </li>
            ))}
          </ul>
        }
      >
        <p>Type it in the box on top, as it is printed or as you measured it. For example:</p>
      </Empty>
    </>
  );
}

function Answer({ found, q }: { found: Found; q: string }) {
  const { understood, sizes, parts, models, near } = found;
  const exact = onlyOne(found);
  const otherParts = exact ? parts.filter(part => part.size !== exact.size) : parts;
  const numbered = parts.some(part => part.matched === 'number');
  const nothing = sizes.length + parts.length + models.length + near.length + found.pages.length === 0;
  return (
    <div className="stack">
      <div>
        <h1 className="only-heard">Find: {q}</h1>
        {found.corrected.map(({ from, to }) => (
          <p key={from} className="quiet">
            “{from}” is not on this bench: taken for <b>{to}</b>.
          </p>
        ))}
        {understood && !numbered ? (
          <Understood understood={understood} q={q} taken={exact?.size ?? null} />
        ) : null}
        <p className="only-heard" role="status">
          {summary(found)}
        </p>
      </div>
      {nothing ? (
        <Empty title="Nothing on this bench by that.">
          <p>
            {understood?.size
              ? `No list here names ${sizeWords(understood.size)}, and nothing near it either.`
              : 'No part number, model or name is like it. Try the size, or fewer words.'}
          </p>
        </Empty>
      ) : null}
      {exact ? <SizeView size={exact.size} attrs={understood?.attrs} /> : null}
      {!exact && sizes.length > 0 ? <SizeHits title="Sizes" hits={sizes} /> : null}
      {sizes.length === 0 && near.length > 0 && !numbered ? (
        <SizeHits title="None exactly; these are near" hits={near} wanted={understood?.size} />
      ) : null}
      {otherParts.length > 0 ? <PartHits parts={otherParts} wanted={understood?.size} /> : null}
      {models.length > 0 ? (
        <Section title="Models" aside={models.length}>
          <ul className="rows">
            {models.map(model => (
              <li key={model.id} className="model-hit">
                <Link href={`/models/${model.id}`}>
                  {model.maker.name} {model.name}
                </Link>
                <span className="quiet">{model.lines} lines</span>
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      <PageHits pages={found.pages} q={q} />
    </div>
  );
}

/** The one size of this bench that the query can mean, where there is just one: its sheet is the answer. */
function onlyOne({ sizes, understood }: Found): Found['sizes'][number] | null {
  const [only, ...more] = sizes;
  if (!only || !understood || more.length > 0) return null;
  const meant = [understood.size, ...understood.otherwise.map(way => way.size)];
  return meant.includes(only.size) ? only : null;
}

function summary({ sizes, parts, models, pages }: Found): string {
  const said = [
    sizes.length > 0 ? `${sizes.length} sizes` : '',
    parts.length > 0 ? `${parts.length} parts` : '',
    models.length > 0 ? `${models.length} models` : '',
    pages.length > 0 ? `${pages.length} pages of diagrams` : '',
  ].filter(Boolean);
  return said.length > 0 ? `Found ${said.join(', ')}.` : 'Nothing found.';
}
