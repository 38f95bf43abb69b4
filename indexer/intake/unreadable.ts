/** Why a whole document cannot be read, as the refusal's code. */
export type UnreadableCode = 'too-large' | 'unreadable' | 'unknown-kind' | 'no-rows';

/** Thrown when nothing of a document can be given; what is wrong in one place only is a fault beside the rows. */
export class Unreadable extends Error {
  override readonly name = 'Unreadable';
  readonly code: UnreadableCode;
  readonly place: string;
  readonly remedy: string;

  constructor(code: UnreadableCode, facts: { place: string; message: string; remedy: string }) {
    super(facts.message);
    this.code = code;
    this.place = facts.place;
    this.remedy = facts.remedy;
  }
}

/** A document that holds no list. */
export const noRows = (message: string): Unreadable =>
  new Unreadable('no-rows', {
    place: 'the document',
    message,
    remedy:
      'Send the parts list itself, one part on each line, with at least a description or a part number.',
  });
