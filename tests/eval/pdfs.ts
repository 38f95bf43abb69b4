import { makePdf, pdfKinds } from '../documents/make-pdfs.ts';
import { randomKind } from '../documents/random-pdf.ts';
import { readMadePdf } from '../documents/read-made-pdf.ts';
import { type Score, sum } from '../documents/score.ts';
import type { BalloonScore } from '../documents/score-balloons.ts';
import { percent } from './percent.ts';

/**
 * How well printed lists and drawings are read: every kind once and so many more that chance lays out, each with its
 * truth. Prints those with a fault, then the sums.
 */
export async function evaluatePdfs(count: number, first = 1000): Promise<void> {
  const tried = [
    ...pdfKinds.map(kind => ({ kind, seed: first })),
    ...Array.from({ length: count }, (_, nth) => ({ kind: randomKind(first + nth), seed: first + nth })),
  ];
  const scores: Score[] = [];
  const balloons: BalloonScore[] = [];
  for (const { kind, seed } of tried) {
    const one = await readMadePdf(await makePdf(kind, seed));
    scores.push(one.rows);
    balloons.push(one.balloons);
    const wrong = [...one.rows.wrong.slice(0, 3), ...one.balloons.wrong.slice(0, 3)];
    if (wrong.length === 0) continue;
    const { found, lines, extra } = one.rows;
    console.log(
      `${kind.name} (${seed}): ${found} of ${lines} lines, ${extra} extra, ${one.balloons.hit} of ${one.balloons.drawn} balloons\n  ${wrong.join('\n  ')}`,
    );
  }
  const all = sum(scores);
  const drawn = balloons.reduce((total, each) => total + each.drawn, 0);
  const hit = balloons.reduce((total, each) => total + each.hit, 0);
  const found = balloons.reduce((total, each) => total + each.found, 0);
  console.log(
    [
      `\n${tried.length} PDFs, ${all.lines} lines: found ${percent(all.found, all.lines)}, extra ${percent(all.extra, all.lines)}, out of order ${all.inversions}`,
      `quantity ${percent(all.qty, all.lines)}, description ${percent(all.description, all.lines)}, relations ${percent(...all.relations)}, counts for models ${percent(...all.variants)}`,
      `balloons found ${percent(hit, drawn)} of ${drawn}, false ${percent(found - hit, found)}`,
    ].join('\n'),
  );
}
