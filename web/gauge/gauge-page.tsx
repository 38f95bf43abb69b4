import { type CSSProperties, type FormEvent, useState } from 'react';
import { Link, useSearchParams } from 'wouter';
import { checkBar, type Gauge, gaugeOf, gaugeSheetEnds, gaugeSheets } from '../../indexer/index.ts';
import { useKnownSizes } from '../measure/use-known.ts';
import { Ways } from '../measure/ways.tsx';
import { headingWords } from '../part/size.tsx';
import { Button, Chip, Field } from '../ui/controls.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Empty } from '../ui/states.tsx';
import { keptPixels, SetScreen } from './set-screen.tsx';
import '../measure/measure.css';
import './gauge.css';

/** Some of the bench's own sizes are offered; no more than fit a glance. */
const offered = 12;

/** Parts at true size: on paper with a bar to check the print by, and on a screen that was set against a bank card. */
export function GaugePage() {
  const [search, setSearch] = useSearchParams();
  const [pixels, setPixels] = useState(keptPixels);
  const chosen = (search.get('sizes') ?? '').split(',').filter(Boolean);
  const gauges = chosen.flatMap(size => gaugeOf(size) ?? []);
  const put = (sizes: string[]) =>
    setSearch(sizes.length > 0 ? { sizes: sizes.join(',') } : {}, { replace: true });
  const { sheets, tooLarge } = laid(gauges);
  return (
    <Sheet
      title="Gauge sheet"
      cells={[
        { label: 'Paper', value: 'A4, 1:1' },
        { label: 'Check bar', value: `${checkBar} mm` },
      ]}
    >
      <div className="no-print">
        <Ways />
        <div className="page-head">
          <h1>Gauge sheet</h1>
          <p className="quiet">
            Lay a loose part on its outline. Print at 100 %, without fitting to the page, and put a ruler on
            the bar: where it is not {checkBar} mm, the outlines are not true either.
          </p>
        </div>
        <Section title="Sizes on it" aside={chosen.length}>
          <ChooseSizes chosen={chosen} onChange={put} />
        </Section>
        <Section title="On this screen" aside={pixels ? 'set against a card' : 'not set yet'}>
          <SetScreen pixels={pixels} onSet={setPixels} />
        </Section>
      </div>
      {tooLarge ? <p role="alert">{tooLarge}</p> : null}
      {sheets.length > 0 ? (
        <section className="gauge-sheets" aria-label="The sheet">
          <div className="buttons no-print">
            <Button weight="main" onClick={() => print()}>
              Print at true size
            </Button>
            <span className="label">
              {pixels
                ? 'Shown at true size too.'
                : 'Shown smaller or larger than it is, until this screen is set.'}
            </span>
          </div>
          <section
            className="gauge-scroll"
            // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard
            tabIndex={0}
            aria-label="Sheets, scrolled sideways where narrow"
          >
            {sheets.map(({ svg, end }, order) => (
              <img
                // biome-ignore lint/suspicious/noArrayIndexKey: sheets are numbered and drawn anew
                key={order}
                className="gauge-sheet"
                style={{ '--end': end, ...(pixels && { '--screen-mm': `${pixels}px` }) } as CSSProperties}
                src={`data:image/svg+xml,${encodeURIComponent(svg)}`}
                alt={`Sheet ${order + 1} of ${sheets.length}: ${gauges.map(({ label }) => label).join(', ')}`}
              />
            ))}
          </section>
        </section>
      ) : null}
    </Sheet>
  );
}

interface Laid {
  sheets: { svg: string; end: number }[];
  tooLarge: string | null;
}

function laid(gauges: readonly Gauge[]): Laid {
  try {
    const ends = gaugeSheetEnds(gauges);
    return {
      sheets: gaugeSheets(gauges).map((svg, order) => ({ svg, end: ends[order]! })),
      tooLarge: null,
    };
  } catch (error) {
    if (error instanceof RangeError) return { sheets: [], tooLarge: error.message };
    throw error;
  }
}

interface ChooseSizesProps {
  chosen: readonly string[];
  onChange: (sizes: string[]) => void;
}

function ChooseSizes({ chosen, onChange }: ChooseSizesProps) {
  const known = useKnownSizes();
  const [typed, setTyped] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const offers = known.map(({ size }) => size).filter(size => !chosen.includes(size) && gaugeOf(size));
  const add = (event: FormEvent) => {
    event.preventDefault();
    const size = typed.trim();
    if (!gaugeOf(size))
      return setWrong('That is no size with an outline: write bearing 5x11x4 or screw M3x0.5x8.');
    setWrong(null);
    setTyped('');
    onChange([...new Set([...chosen, size])]);
  };
  return (
    <div className="stack choose-sizes">
      {chosen.length > 0 ? (
        <div className="chips">
          {chosen.map(size => (
            <Chip
              key={size}
              label=""
              value={headingWords(size)}
              onRemove={() => onChange(chosen.filter(each => each !== size))}
            />
          ))}
        </div>
      ) : (
        <Empty title="No size on it yet.">
          <p>
            Add one below, or measure a <Link href="/measure">loose part</Link> first.
          </p>
        </Empty>
      )}
      <form className="add-size" onSubmit={add}>
        <Field
          label="A size"
          placeholder="bearing 5x11x4"
          value={typed}
          wrong={wrong}
          autoComplete="off"
          autoCapitalize="off"
          onChange={event => setTyped(event.target.value)}
        />
        <Button type="submit">Put it on</Button>
      </form>
      {offers.length > 0 ? (
        <div>
          <h3>Met most on this bench</h3>
          <ul className="buttons">
            {offers.slice(0, offered).map(size => (
              <li key={size}>
                <Button weight="thin" onClick={() => onChange([...chosen, size])}>
                  {headingWords(size)}
                </Button>
              </li>
            ))}
          </ul>
        </div>
      ) : null}
    </div>
  );
}
