import { foldHeader } from '../../reading/column-words.ts';
import type { Box } from './matrix.ts';
import { segmentsOf } from './region.ts';
import { boxOf, type Sheet, textOf } from './sheet.ts';
import type { Word } from './words.ts';

/** What the cells of a title block are called (ISO 7200 and what drawing offices add to it; common practice). */
const blockLabels = new Set(
  `scale, drawn, drawn by, checked, checked by, chk, approved, approved by, appr, appd, date, title, sheet, rev, revision,
   dwg no, dwg, drawing no, drawing number, drawing, size, material, finish, weight, mass, tolerance, tolerances, projection,
   third angle projection, first angle projection, unless otherwise specified, company, project, designed, designed by,
   signature, do not scale drawing, cage code, massstab, gezeichnet, gepruft, gez, gepr, datum, blatt, benennung, werkstoff,
   zeichnungsnummer, echelle, dessine, dessine par, verifie, verifie par, feuille, titre, matiere, scala, disegnato,
   controllato, foglio, titolo, materiale, data, escala, dibujado, comprobado, hoja, titulo, fecha, schaal, getekend,
   gecontroleerd, blad, 尺度, 製図, 検図, 承認, 設計, 図名, 図番, 日付`
    .split(',')
    .map(label => label.trim()),
);

/** Labels of one block are no farther apart than this, in heights of their letters. */
const apartDown = 9;
const apartAcross = 45;

interface Label extends Box {
  size: number;
  text: string;
}

/** The words of title blocks: three labels or more that stand together, over more than one line. */
export function titleBlocks(sheet: Sheet, titles: ReadonlySet<Word>): Word[] {
  const labels = sheet.lines.flatMap(line => labelsIn(line, titles));
  const found: Word[] = [];
  const left = new Set(labels);
  for (const label of labels) {
    if (!left.delete(label)) continue;
    const group = [label];
    for (const one of group)
      for (const other of left)
        if (isBeside(one, other)) {
          left.delete(other);
          group.push(other);
        }
    const lines = new Set(group.map(({ bottom }) => Math.round(bottom / 3)));
    if (new Set(group.map(({ text }) => text)).size < 3 || lines.size < 2) continue;
    const box = boxOf(group);
    const right = box.right + 12 * label.size;
    const edge = sheet.uprights.filter(
      ({ at, from, to }) => at > box.right && from < box.bottom && to > box.top && at < right,
    );
    const end = edge.at(-1)?.at ?? right;
    const reach = 2 * label.size;
    for (const word of sheet.words)
      if (
        word.left > box.left - reach &&
        word.left < end &&
        word.base > box.top &&
        word.base < box.bottom + reach &&
        !titles.has(word)
      )
        found.push(word);
  }
  return found;
}

/** The words that labels begin with, as they may be printed: most words of a page are none, and need no closer look. */
const firstWords = new Set([...blockLabels].map(label => label.split(' ')[0]!));
const mayBegin = ({ text }: Word): boolean =>
  text.length < 20 && (firstWords.has(text.toLowerCase().replace(/[.:]+$/, '')) || /[^\x20-\x7e]/.test(text));

function labelsIn(line: readonly Word[], titles: ReadonlySet<Word>): Label[] {
  if (!line.some(mayBegin)) return [];
  return segmentsOf(line).flatMap(words => {
    if (!mayBegin(words[0]!)) return [];
    for (let length = Math.min(4, words.length); length > 0; length -= 1) {
      const some = words.slice(0, length);
      const text = foldHeader(textOf(some)).replace(/:$/, '');
      if (some.some(word => titles.has(word)) || !blockLabels.has(text)) continue;
      return [{ ...boxOf(some), size: words[0]!.size, text }];
    }
    return [];
  });
}

const isBeside = (a: Label, b: Label): boolean => {
  const size = Math.max(a.size, b.size);
  return (
    Math.max(a.top - b.bottom, b.top - a.bottom) < apartDown * size &&
    Math.max(a.left - b.right, b.left - a.right) < apartAcross * size
  );
};
