import { z } from '@hono/zod-openapi';

/** A sign-in name as it is kept and compared: NFKC, small letters, no space about it. */
export const foldSignIn = (text: string): string => text.normalize('NFKC').trim().toLowerCase();

/** The same, of one that can be a name. */
export const signInName = z
  .string()
  .transform(foldSignIn)
  .pipe(
    z
      .string()
      .min(3, 'Should have at least 3 letters')
      .max(60, 'Should have at most 60 letters')
      .regex(/^[\p{L}\p{N}][\p{L}\p{N}._@+-]*$/u, 'Should be letters, digits and . _ @ + - alone'),
  );

/** A password that is being set. Length is what counts; nothing is asked of its letters (NIST SP 800-63B). */
export const newPassword = z
  .string()
  .min(12, 'Should have at least 12 characters: three or four words do well')
  .max(200, 'Should have at most 200 characters');
