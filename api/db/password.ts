import { createHash, createHmac, pbkdf2Sync, randomBytes } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { errorCode } from './errors.ts';

/** The administrator's password for the database in this folder: random, made once, in a file we alone can read. */
export async function administratorPassword(folder: string): Promise<string> {
  const file = join(folder, 'postgres-password');
  try {
    await writeFile(file, `${randomBytes(32).toString('base64url')}\n`, { mode: 0o600, flag: 'wx' });
  } catch (error) {
    if (errorCode(error) !== 'EEXIST') throw error;
  }
  return (await readFile(file, 'utf8')).trim();
}

/**
 * What PostgreSQL stores of a password: enough to check it, not to know it. Given to initdb in place of the password
 * itself, since the user that initdb runs as must never read that. RFC 5802, RFC 7677, section 3; the layout is that
 * of the PostgreSQL manual, "pg_authid".
 */
export function scramVerifier(password: string, salt = randomBytes(16), rounds = 4096): string {
  const salted = pbkdf2Sync(password, salt, rounds, 32, 'sha256');
  const key = (of: string) => createHmac('sha256', salted).update(of).digest();
  const stored = createHash('sha256').update(key('Client Key')).digest('base64');
  return `SCRAM-SHA-256$${rounds}:${salt.toString('base64')}$${stored}:${key('Server Key').toString('base64')}`;
}
