import type { Instrument } from '../../indexer/index.ts';

const place = (what: string) => `fettle.instrument.${what}`;

/** The instrument last taken for a dimension here, where it still reaches it; else the usual one. */
export function keptInstrument(what: string, ways: readonly Instrument[]): Instrument {
  const kept = localStorage.getItem(place(what)) as Instrument | null;
  return kept && ways.includes(kept) ? kept : ways[0]!;
}

export const keepInstrument = (what: string, instrument: Instrument): void =>
  localStorage.setItem(place(what), instrument);
