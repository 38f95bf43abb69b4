import type { Line } from './line.ts';
import type { Token } from './tokens.ts';

/** Words that begin an instruction when an article stands behind them: print the parts, serrer les vis. */
const verbs = new Set(
  (
    'align apply assemble attach bolt check clean connect cut drill ensure feed file fit fix glue grease hold insert install join lay leave lift ' +
    'loosen lower make mark mount oil open place position press print pull push put ream remove repeat replace route rotate run secure set ' +
    'slide solder squeeze tap tape thread tie tighten trim turn use wind wipe ' +
    'serrer desserrer visser devisser monter demonter inserer placer enlever retirer graisser verifier coller poser fixer ' +
    'inserire serrare avvitare svitare montare rimuovere posizionare ingrassare verificare incollare fissare ' +
    'insertar apretar aflojar montar quitar colocar engrasar comprobar pegar fijar'
  ).split(' '),
);

/** Verbs that are no part's name, and need no article: tighten screws. */
const plainVerbs = new Set(
  'apply tighten loosen ensure repeat serrer desserrer visser devisser serrare apretar'.split(' '),
);

const articles = new Set(
  'the a an all both your each any this these it into onto le la les un une il lo gli i el los las una'.split(
    ' ',
  ),
);

/** German and Dutch put the verb last. */
const lastVerbs = new Set(
  (
    'einsetzen anziehen festziehen montieren demontieren entfernen losen einlegen einschrauben einfetten olen prufen ' +
    'plaatsen aandraaien vastdraaien monteren verwijderen losdraaien invetten controleren'
  ).split(' '),
);

/** Words that refer to something else on the sheet: see, includes, siehe. */
const referring = new Set(
  'see siehe voir vedi ver zie includes contains comprend comprende incluye bevat'.split(' '),
);

/** Words that number a drawing or a part of the sheet when a number stands behind them: Fig. 4-12, Group 1304. */
const numbered = new Set(
  'fig figs figure figures group chapter section table sheet page step abb abbildung bild gruppe seite blatt figura gruppo grupo groupe tabelle tableau afb pagina'.split(
    ' ',
  ),
);

/** Whether a line tells what to do, or refers elsewhere, and names no part. */
export function isInstruction({ tokens, threads, groups }: Line): boolean {
  const at = tokens.findIndex(t => t.kind === 'word');
  const first = tokens[at];
  if (!first || at > 3) return false;
  if (referring.has(first.text) || (first.text === 'made' && tokens[at + 1]?.text === 'in')) return true;
  const sized = threads.length > 0 || groups.some(g => g.joined);
  if (at === 0 && !sized && numbered.has(first.text)) return isNumber(tokens, 1);
  if (sized) return false;
  if (plainVerbs.has(first.text) && tokens.length > at + 1) return true;
  if (at === 0 && first.text === 'for' && meantFor.has(tokens[1]?.text ?? '')) return true;
  if (verbs.has(first.text) && isTold(tokens, at)) return true;
  if (verbs.has(first.text))
    return tokens.some(
      (t, i) => i > at && articles.has(t.text) && t.gap > 0 && (tokens[i + 1]?.gap ?? 0) > 0,
    );
  const last = tokens.findLast(t => t.kind === 'word')!;
  return last !== first && lastVerbs.has(last.text);
}

/** `fit bearing with retaining compound`, `grease gears on assembly`: a verb, what it is done to, and how; no figure. */
function isTold(tokens: readonly Token[], at: number): boolean {
  if (tokens[at + 1]?.kind !== 'word' || tokens.some(t => t.kind !== 'word' && t.text !== '.')) return false;
  const how = tokens.findIndex((t, i) => i > at + 1 && adverbs.has(t.text));
  return how > 0 && how < tokens.length - 1;
}

const adverbs = new Set('with on onto before after until during using by lightly firmly'.split(' '));

/** What a note is for and no part is: for models A and B. */
const meantFor = new Set(
  'model models serial serials s units unit machines versions variants types'.split(' '),
);

/** A number, or a Roman one, behind a point perhaps. */
function isNumber(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at]?.text === '.' ? tokens[at + 1] : tokens[at];
  return token?.kind === 'number' || /^[ivx]+$/.test(token?.text ?? '');
}
