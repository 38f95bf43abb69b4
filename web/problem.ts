/**
 * Something that was refused, as RFC 9457 problem details give it: what, where, and what to do about it.
 */
export class Problem extends Error {
  override readonly name = 'Problem';
  readonly code: string;
  readonly place: string;
  readonly remedy: string;
  /** Of the answer; 0 where there was none. */
  readonly status: number;

  constructor(code: string, message: string, place: string, remedy: string, status: number) {
    super(message);
    this.code = code;
    this.place = place;
    this.remedy = remedy;
    this.status = status;
  }

  /** Any thrown thing as a problem; what is no problem of ours is the connection. */
  static from(error: unknown): Problem {
    if (error instanceof Problem) return error;
    if (error instanceof TypeError)
      return new Problem(
        'not-reached',
        'The bench does not answer.',
        '',
        'See that the program still runs, then try again. Nothing you typed is lost.',
        0,
      );
    return new Problem(
      'internal',
      'Something here failed.',
      '',
      'Try again; if it stays, load the page anew.',
      0,
    );
  }

  /** What an answer that is not well says of itself. */
  static async of(response: Response): Promise<Problem> {
    const body: unknown = await response.json().catch(() => null);
    const told = (typeof body === 'object' && body !== null ? body : {}) as Record<string, unknown>;
    const word = (name: string) => (typeof told[name] === 'string' ? (told[name] as string) : '');
    return new Problem(
      word('code') || `http-${response.status}`,
      word('detail') || word('title') || 'The bench refused this.',
      word('place'),
      word('remedy'),
      response.status,
    );
  }
}
