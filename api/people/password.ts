import { hash, verify } from '@node-rs/argon2';

/** OWASP Password Storage Cheat Sheet: Argon2id with 19 MiB of memory, two passes, one lane (RFC 9106). */
const cost = { algorithm: 2, memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

/** Unicode NFKC, so that a password typed on another keyboard is the same (NIST SP 800-63B, section 3.1.1.2). */
const plain = (password: string) => password.normalize('NFKC');

/** What is kept of a password, in the PHC string format: enough to check it, not to know it. */
export const hashPassword = (password: string): Promise<string> => hash(plain(password), cost);

/** A password that nobody has: checked where a name is nobody's, so that it takes as long as one that is somebody's. */
let nobodys: Promise<string> | undefined;

/** Whether a password is the one that was kept. Takes its time also where nothing was. */
export async function isPassword(password: string, kept: string | null): Promise<boolean> {
  nobodys ??= hashPassword(crypto.randomUUID());
  const right = await verify(kept ?? (await nobodys), plain(password));
  return right && kept !== null;
}
