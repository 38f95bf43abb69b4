import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/**
 * What lets someone in: a session, an API token, an invitation or a link to a new password. To its holder it is one
 * opaque word, `fettle_<kind>_` and base64url. In it stand whose it is (a person or a workshop), its id, and 32 random
 * bytes, so that it is looked up under row-level security by its key, and kept as a digest alone.
 */
export interface Credential {
  owner: string;
  id: string;
  secret: Buffer;
}

const kinds = { session: 's', token: 't', invitation: 'i', password: 'p' } as const;
export type CredentialKind = keyof typeof kinds;

/** A new credential: the word for its holder, and the digest to keep. */
export function mint(kind: CredentialKind, owner: string, id: string): { word: string; digest: string } {
  const secret = randomBytes(32);
  const body = Buffer.concat([bytesOf(owner), bytesOf(id), secret]);
  return { word: `fettle_${kinds[kind]}_${body.toString('base64url')}`, digest: digestOf(secret) };
}

/** What a word holds; null where it is none of this kind. */
export function parse(kind: CredentialKind, word: string): Credential | null {
  const body = new RegExp(`^fettle_${kinds[kind]}_([\\w-]{86})$`).exec(word)?.[1];
  if (!body) return null;
  const bytes = Buffer.from(body, 'base64url');
  return { owner: uuidOf(bytes, 0), id: uuidOf(bytes, 16), secret: bytes.subarray(32) };
}

/** Whether the digest that was kept is this credential's. */
export function matches(credential: Credential, kept: string): boolean {
  const given = Buffer.from(digestOf(credential.secret));
  const right = Buffer.from(kept);
  return given.length === right.length && timingSafeEqual(given, right);
}

/** The secret has 256 bits of chance, so a plain digest keeps it as well as a slow one. */
const digestOf = (secret: Buffer) => createHash('sha256').update(secret).digest('hex');

const bytesOf = (uuid: string) => Buffer.from(uuid.replaceAll('-', ''), 'hex');
const uuidOf = (bytes: Buffer, from: number) =>
  bytes.toString('hex', from, from + 16).replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
