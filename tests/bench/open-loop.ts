import { setTimeout as sleep } from 'node:timers/promises';

/** How long answers took, in milliseconds, and how many failed. */
export interface Latencies {
  p50: number;
  p95: number;
  p99: number;
  most: number;
  count: number;
  failed: number;
}

/**
 * Asks at a steady rate, whether or not earlier questions are answered, so that one slow answer does not spare the
 * next ones. Each is timed from the moment it was due.
 */
export async function askAtARate(
  ask: (nth: number) => Promise<unknown>,
  { rate, count }: { rate: number; count: number },
): Promise<Latencies> {
  const times: number[] = [];
  let failed = 0;
  const begin = performance.now() + 10;
  const asked: Promise<void>[] = [];
  for (let nth = 0; nth < count; nth++) {
    const due = begin + (nth * 1000) / rate;
    const early = due - performance.now();
    if (early > 0) await sleep(early);
    asked.push(
      ask(nth).then(
        () => void times.push(performance.now() - due),
        () => void failed++,
      ),
    );
  }
  await Promise.all(asked);
  times.sort((a, b) => a - b);
  const at = (share: number) => times[Math.min(times.length - 1, Math.floor(times.length * share))] ?? 0;
  return { p50: at(0.5), p95: at(0.95), p99: at(0.99), most: times.at(-1) ?? 0, count: times.length, failed };
}
