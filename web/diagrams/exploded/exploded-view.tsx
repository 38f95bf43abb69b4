import { useEffect, useState } from 'react';
import { useSearchParams } from 'wouter';
import type { DrawingAnswer } from '../../../api/answers/index.ts';
import { May } from '../../people/may.tsx';
import { Button } from '../../ui/controls.tsx';
import { Section } from '../../ui/sheet.tsx';
import type { Balloon } from './balloon.ts';
import { BalloonEditor } from './balloon-editor.tsx';
import { FindOnDrawing, type Place } from './find-on-drawing.tsx';
import { fromAfar, Plate } from './plate.tsx';
import type { View } from './view.ts';
import './exploded-view.css';

interface ExplodedViewProps {
  diagram: string;
  drawing: DrawingAnswer;
  /** The line that is looked at. */
  chosen: string | null;
  /** Lines that a person should look at. */
  doubtful: Set<string>;
  onChoose: (balloon: Balloon) => void;
}

/** The pages of a diagram, to move about in; a tap on a balloon means its line. The list beside it is its equal. */
export function ExplodedView({ diagram, drawing, chosen, doubtful, onChoose }: ExplodedViewProps) {
  const ofChosen = drawing.balloons.filter(balloon => balloon.lines.some(line => line.row === chosen));
  const [search] = useSearchParams();
  const asked = { words: search.get('find') ?? '', page: Number(search.get('page')) };
  const [number, setNumber] = useState(asked.page || firstDrawn(drawing));
  const [finding, setFinding] = useState(asked.words !== '');
  const [found, setFound] = useState<{ place: Place | null; all: Place[] }>({ place: null, all: [] });
  const [editing, setEditing] = useState(false);
  const [looked, setLooked] = useState<View>(fromAfar);
  const turnTo = (page: number) => {
    setNumber(page);
    setLooked(fromAfar);
  };

  // Choosing a line turns to a page that shows it, unless this one does.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new choice turns the page, so that one may leaf on
  useEffect(() => {
    if (ofChosen[0] && !ofChosen.some(balloon => balloon.page === number)) turnTo(ofChosen[0].page);
  }, [chosen]);

  const page = drawing.pages.find(each => each.number === number) ?? drawing.pages[0];
  if (!page) return null;
  const onPage = drawing.balloons.filter(balloon => balloon.page === page.number);
  const Pane = editing ? BalloonEditor : Plate;
  return (
    <Section
      className="exploded"
      title="Drawing"
      aside={`${onPage.length} ${onPage.length === 1 ? 'balloon' : 'balloons'}`}
    >
      {finding ? (
        <FindOnDrawing
          diagram={diagram}
          first={asked}
          onShow={(place, all) => {
            setFound({ place, all });
            if (place && place.page !== number) turnTo(place.page);
          }}
        />
      ) : null}
      {drawing.pages.length > 1 ? <Pages drawing={drawing} shown={page.number} onTurn={turnTo} /> : null}
      <Pane
        key={page.number}
        diagram={diagram}
        page={page}
        balloons={onPage}
        chosen={ofChosen}
        doubtful={doubtful}
        onChoose={onChoose}
        looked={looked}
        onLook={setLooked}
        found={found.all.filter(place => place.page === page.number)}
        shown={found.place?.page === page.number ? found.place : null}
      >
        <May least="repairer">
          <button
            type="button"
            aria-expanded={finding}
            onClick={() => {
              setFinding(!finding);
              setFound({ place: null, all: [] });
            }}
          >
            Find
            <span className="only-heard">: words on the drawing</span>
          </button>
          <button type="button" aria-pressed={editing} onClick={() => setEditing(!editing)}>
            {editing ? 'Done' : 'Put right'}
            <span className="only-heard">: the balloons</span>
          </button>
        </May>
      </Pane>
      <div className="under-drawing">
        <ul className="legend label">
          <li>
            <i className="key chosen" />
            chosen
          </li>
          <li>
            <i className="key doubtful" />
            to check
          </li>
          <li>
            <i className="key loose" />
            no line of that number
          </li>
        </ul>
      </div>
    </Section>
  );
}

interface PagesProps {
  drawing: DrawingAnswer;
  shown: number;
  onTurn: (page: number) => void;
}

/** Turns the pages; each says how many balloons it has. */
function Pages({ drawing, shown, onTurn }: PagesProps) {
  const at = drawing.pages.findIndex(page => page.number === shown);
  const turn = (by: number) => drawing.pages[at + by]?.number;
  const before = turn(-1);
  const after = turn(1);
  return (
    <nav className="turn-pages" aria-label="Pages of the document">
      <Button weight="thin" disabled={!before} onClick={() => before && onTurn(before)}>
        Page before
      </Button>
      <span>
        page <b className="fig">{shown}</b> of <span className="fig">{drawing.pages.length}</span>
      </span>
      <Button weight="thin" disabled={!after} onClick={() => after && onTurn(after)}>
        Next page
      </Button>
    </nav>
  );
}

/** The page with the most balloons, the first of such: a list often has none. */
function firstDrawn({ pages, balloons }: DrawingAnswer): number {
  const count = (page: number) => balloons.filter(balloon => balloon.page === page).length;
  const [best] = [...pages].sort((a, b) => count(b.number) - count(a.number) || a.number - b.number);
  return best?.number ?? 1;
}
