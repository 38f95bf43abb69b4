import { Session } from 'node:inspector';

interface Coverage {
  result: { url: string; functions: { ranges: { count: number }[] }[] }[];
}

/**
 * Counts the steps of work: how often each block of the indexer's code is entered, as the engine itself counts them for
 * coverage. Unlike time it is much the same on every machine. A built-in function counts as one step.
 */
export class StepCounter {
  readonly #session = new Session();

  constructor() {
    this.#session.connect();
    this.#session.post('Profiler.enable');
    this.#session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
  }

  count(work: () => void): number {
    this.#take();
    work();
    return this.#take();
  }

  /** The steps since it was last asked. */
  #take(): number {
    let steps = 0;
    this.#session.post('Profiler.takePreciseCoverage', (error, taken) => {
      if (error) throw error;
      for (const { url, functions } of (taken as Coverage).result)
        if (url.includes('/indexer/') && !url.includes('/tests/'))
          for (const { ranges } of functions) for (const { count } of ranges) steps += count;
    });
    return steps;
  }

  close(): void {
    this.#session.post('Profiler.stopPreciseCoverage');
    this.#session.disconnect();
  }
}
