import { lazy, type ReactNode, Suspense, useEffect, useRef } from 'react';
import { Link, Route, Switch, useLocation } from 'wouter';
import { BenchProvider, useBench } from './bench.tsx';
import { DiagramPage } from './diagrams/diagram-page.tsx';
import { DiagramsPage } from './diagrams/diagrams-page.tsx';
import { ModelPage } from './diagrams/model-page.tsx';
import { ComparePage } from './find/compare-page.tsx';
import { FindPage } from './find/find-page.tsx';
import { PartPage } from './find/part-page.tsx';
import { SizePage } from './find/size-page.tsx';
import { JobPage } from './jobs/job-page.tsx';
import { JobsPage } from './jobs/jobs-page.tsx';
import { OrderPage } from './order/order-page.tsx';
import { BackupPage } from './people/backup-page.tsx';
import { WhoProvider } from './people/door.tsx';
import { PeoplePage } from './people/people-page.tsx';
import { TokensPage } from './people/tokens-page.tsx';
import { TrailPage } from './people/trail-page.tsx';
import { YouPage } from './people/you-page.tsx';
import { StartPage } from './start/start-page.tsx';
import { Top } from './top.tsx';
import { Sheet } from './ui/sheet.tsx';
import { Empty, Refused, Waiting } from './ui/states.tsx';
import { Toasts } from './ui/toast.tsx';

/** Measuring brings the standards' tables with it, so it is fetched when it is first gone to. */
const MeasurePage = lazy(async () => ({ default: (await import('./measure/measure-page.tsx')).MeasurePage }));
const FitPage = lazy(async () => ({ default: (await import('./fit/fit-page.tsx')).FitPage }));
const GaugePage = lazy(async () => ({ default: (await import('./gauge/gauge-page.tsx')).GaugePage }));

/** Every view under one roof; each place is a folder. */
export function App() {
  return (
    <Toasts>
      <WhoProvider>
        <BenchProvider>
          <a className="skip no-print" href="#content">
            Skip to the sheet
          </a>
          <Top />
          <FocusOnArrival />
          <Switch>
            <Route path="/" component={StartPage} />
            <Route path="/find">
              <AtABench>
                <FindPage />
              </AtABench>
            </Route>
            <Route path="/compare">
              <AtABench>
                <ComparePage />
              </AtABench>
            </Route>
            <Route path="/sizes/:size">
              {({ size }) => (
                <AtABench>
                  <SizePage size={decodeURIComponent(size)} />
                </AtABench>
              )}
            </Route>
            <Route path="/parts/:part">
              {({ part }) => (
                <AtABench>
                  <PartPage id={part} />
                </AtABench>
              )}
            </Route>
            <Route path="/measure/:category?">
              {({ category }) => (
                <Brought>
                  <MeasurePage category={category} />
                </Brought>
              )}
            </Route>
            <Route path="/fit">
              <Brought>
                <FitPage />
              </Brought>
            </Route>
            <Route path="/gauge">
              <Brought>
                <GaugePage />
              </Brought>
            </Route>
            <Route path="/diagrams">
              <AtABench>
                <DiagramsPage />
              </AtABench>
            </Route>
            <Route path="/diagrams/:diagram">
              {({ diagram }) => (
                <AtABench>
                  <DiagramPage id={diagram} />
                </AtABench>
              )}
            </Route>
            <Route path="/models/:model">
              {({ model }) => (
                <AtABench>
                  <ModelPage id={model} />
                </AtABench>
              )}
            </Route>
            <Route path="/jobs">
              <AtABench>
                <JobsPage />
              </AtABench>
            </Route>
            <Route path="/jobs/:job">
              {({ job }) => (
                <AtABench>
                  <JobPage id={job} />
                </AtABench>
              )}
            </Route>
            <Route path="/settings" component={YouPage} />
            <Route path="/settings/people">
              <AtABench>
                <PeoplePage />
              </AtABench>
            </Route>
            <Route path="/settings/tokens">
              <AtABench>
                <TokensPage />
              </AtABench>
            </Route>
            <Route path="/settings/backup">
              <AtABench>
                <BackupPage />
              </AtABench>
            </Route>
            <Route path="/settings/trail">
              <AtABench>
                <TrailPage />
              </AtABench>
            </Route>
            <Route path="/order">
              <AtABench>
                <OrderPage />
              </AtABench>
            </Route>
            <Route>
              <Sheet title="No such sheet">
                <h1 className="only-heard">No such sheet</h1>
                <Empty title="There is no sheet at this address.">
                  <p>The places stand along the edge of the page.</p>
                </Empty>
              </Sheet>
            </Route>
          </Switch>
        </BenchProvider>
      </WhoProvider>
    </Toasts>
  );
}

/** A view of a bench's things: waits until it is known which, and starts anew at another. */
function AtABench({ children }: { children: ReactNode }) {
  const { bench, known, error, again } = useBench();
  if (bench) return <div key={bench.id}>{children}</div>;
  return (
    <Sheet title="Bench">
      <h1 className="only-heard">Bench</h1>
      {known ? (
        <Empty
          title="You work at no bench."
          action={
            <Link className="button main" href="/">
              Start one
            </Link>
          }
        >
          <p>Or ask an owner of a bench for a link to come in.</p>
        </Empty>
      ) : error ? (
        <Refused error={error} onAgain={again} />
      ) : (
        <Waiting title="Opening the bench" />
      )}
    </Sheet>
  );
}

/** A view that is fetched when it is gone to; what is in it needs no bench. */
function Brought({ children }: { children: ReactNode }) {
  return (
    <Suspense
      fallback={
        <Sheet title="Measure">
          <h1 className="only-heard">Measure</h1>
          <Waiting title="Fetching the tables" />
        </Sheet>
      }
    >
      {children}
    </Suspense>
  );
}

/** Arriving at another view, the keyboard arrives there too, unless it stands in the find box. */
function FocusOnArrival() {
  const [place] = useLocation();
  const last = useRef(place);
  useEffect(() => {
    if (last.current === place) return;
    last.current = place;
    scrollTo(0, 0);
    if (!document.activeElement?.closest('.find')) document.getElementById('content')?.focus();
  }, [place]);
  return null;
}
