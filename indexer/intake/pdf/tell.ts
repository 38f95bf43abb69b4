import type { Fault } from '../rows.ts';
import { noRows, Unreadable } from '../unreadable.ts';

/** Why a PDF could not be opened, in words for the person who sent it. */
export function unreadablePdf(error: Error): Unreadable {
  if (error.name === 'PasswordException')
    return new Unreadable('unreadable', {
      place: 'the document',
      message: 'This PDF is locked with a password.',
      remedy: 'Open it with its password, print or save it as a PDF without one, and send that.',
    });
  return new Unreadable('unreadable', {
    place: 'the document',
    message: 'This PDF is damaged or not all there: it could not be opened.',
    remedy: 'Download or scan it again; if it opens in a PDF viewer, print it to a new PDF and send that.',
  });
}

interface Textless {
  page: number;
  picture: boolean;
  blank: boolean;
}

const typeIt =
  'Reading pictures of pages comes later. Until then, send the PDF that the maker issued, or the list as a spreadsheet, or paste its lines as text.';

/** What is said of a PDF with neither a list nor a drawing with numbers; null where its faults say enough. */
export function emptyPdf(
  textless: readonly Textless[],
  seen: { read: number; pages: number },
  faults: readonly Fault[],
): Unreadable | null {
  const { read } = seen;
  if (read === 0 && faults.length > 0) return null;
  if (textless.length < read)
    return noRows(
      'The text of this PDF was read, but there is no parts list in it and no drawing with numbers.',
    );
  const looked = looksAt(seen);
  if (textless.every(({ blank }) => blank)) return noRows(`${looked}; nothing stands there.`);
  const pictures = textless.some(({ picture }) => picture);
  return new Unreadable('no-rows', {
    place: 'the document',
    message: pictures
      ? `This PDF holds pictures of pages (a scan or photos) and no text. ${looked}; nothing there could be read.`
      : `This PDF holds drawn lines and no text. ${looked}; its letters may be drawn as outlines.`,
    remedy: typeIt,
  });
}

const looksAt = ({ read, pages }: { read: number; pages: number }): string =>
  pages === 1
    ? 'Its page was looked at'
    : `${read < pages ? `${read} of ${pages}` : `All ${pages}`} pages were looked at`;

/** Pages that show something, but no text; at most a few of them are named one by one. */
export function pagesWithoutText(pages: readonly Textless[]): Fault[] {
  if (pages.length === 0) return [];
  const names = pages.slice(0, 8).map(({ page }) => page);
  const more = pages.length > names.length ? ` and ${pages.length - names.length} more` : '';
  return [
    {
      page: names[0]!,
      place: `page ${names[0]}`,
      code: 'no-text',
      message: `${pages.length === 1 ? 'Page' : 'Pages'} ${names.join(', ')}${more} ${pages.length === 1 ? 'is' : 'are'} a picture without text; what stands there is not read.`,
      remedy: `The other pages are read. ${typeIt}`,
    },
  ];
}

/** Pages left unread at a limit of pages, time or memory. */
export const restUnread = (from: number, to: number): Fault => ({
  page: from,
  place: `page ${from}`,
  code: 'pages-not-read',
  message: `${from < to ? `Pages ${from} to ${to} are` : `Page ${from} is`} not read yet: the document is larger than is read at once. The pages before are kept.`,
  remedy: 'Read the rest: what is read stays, and the rest comes to it.',
});

/** A page on which the reader was ended. */
export const pageTooMuch = (page: number, why: string): Fault => ({
  page,
  place: `page ${page}`,
  code: 'page-too-much',
  message: `Page ${page} was too much to read (${why.replace(/\.$/, '')}). The pages before it are read.`,
  remedy: `Print page ${page} from a PDF viewer to a new PDF and take that in as well.`,
});

export const pageBroken = (page: number): Fault => ({
  page,
  place: `page ${page}`,
  code: 'page-broken',
  message: 'This page is damaged and could not be read; the other pages are.',
  remedy: 'Print this page from a PDF viewer to a new PDF and send that, or type its lines.',
});

/** A document with drawings alone. */
export const drawingOnly = (balloons: number): Fault => ({
  page: 1,
  place: 'the document',
  code: 'no-list',
  message: `The drawing was read, with ${balloons} reference ${balloons === 1 ? 'number' : 'numbers'} on it; there is no parts list in this document.`,
  remedy: 'Take in the parts list of the same model as well: the numbers are tied to its lines.',
});
