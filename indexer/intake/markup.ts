import { Parser } from 'htmlparser2';
import { Unreadable } from './unreadable.ts';
import type { Zip } from './zip.ts';

export type Attributes = Readonly<Record<string, string>>;

/** What is told of a document in markup, in order. */
export interface MarkupHandler {
  open(name: string, attributes: Attributes): void;
  close(name: string): void;
  text(text: string): void;
}

/** Elements within elements; no document of people comes near it. */
const mostDepth = 1500;

/**
 * Reads markup piece by piece, nothing of it kept and nothing it names fetched. Entities are those of the standard
 * alone: what a document type declares is never expanded. `xml` tells names without their prefix.
 * @throws {Unreadable} `unreadable` for XML with a document type, or elements too deep within each other
 */
export function markupParser(handler: MarkupHandler, { xml }: { xml: boolean }): Parser {
  const local = (name: string) => (xml ? name.slice(name.indexOf(':') + 1) : name);
  let depth = 0;
  return new Parser(
    {
      onopentag(name, attributes) {
        depth += 1;
        if (depth > mostDepth) throw unsound('its elements stand too deep within each other');
        handler.open(local(name), attributes);
      },
      onclosetag(name) {
        depth -= 1;
        handler.close(local(name));
      },
      ontext: text => handler.text(text),
      onprocessinginstruction(name) {
        if (xml && name.toLowerCase() === '!doctype')
          throw unsound('it declares a document type of its own, which no spreadsheet does');
      },
    },
    { xmlMode: xml, decodeEntities: true },
  );
}

/** Reads a zipped document's member as XML; false where it has no such member. */
export function readXmlMember(zip: Zip, name: string, handler: MarkupHandler): boolean {
  const parser = markupParser(handler, { xml: true });
  let decoder: TextDecoder | null = null;
  const found = zip.read(name, piece => {
    decoder ??= new TextDecoder(wideOrder(piece) ?? 'utf-8');
    parser.write(decoder.decode(piece, { stream: true }));
  });
  parser.end();
  return found;
}

/** XML is UTF-8, or UTF-16 by its mark or its first two signs (XML 1.0, appendix F). */
function wideOrder([a, b]: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  if ((a === 0xff && b === 0xfe) || (a === 0x3c && b === 0)) return 'utf-16le';
  return (a === 0xfe && b === 0xff) || (a === 0 && b === 0x3c) ? 'utf-16be' : null;
}

const unsound = (why: string): Unreadable =>
  new Unreadable('unreadable', {
    place: 'the document',
    message: `The document cannot be read: ${why}.`,
    remedy: 'Save the list as CSV, or copy it and paste it as text.',
  });
