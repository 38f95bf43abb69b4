import type { Store } from '../db/store.ts';
import { makePerson, ownBench } from '../people/add-owner.ts';
import { erasePerson } from '../people/erase-person.ts';
import { makePasswordLink } from '../people/set-password.ts';
import { personNamed } from '../people/sign-in.ts';
import { signInName } from '../people/sign-in-name.ts';
import { refuse } from '../refusal.ts';
import { configurationOf } from './configuration.ts';
import { answering, withStore } from './keeping.ts';
import { readNewPassword } from './read-password.ts';

/** A name as it is kept; refused where it can be none. */
function named(text: string): string {
  const checked = signInName.safeParse(text);
  if (checked.success) return checked.data;
  throw refuse('bad-request', {
    place: 'sign-in name',
    message: `${checked.error.issues[0]!.message}.`,
    remedy: 'Choose another name to sign in by.',
  });
}

async function known(store: Store, signIn: string): Promise<string> {
  const id = await personNamed(store, signIn);
  if (id) return id;
  throw refuse('not-found', {
    place: signIn,
    message: 'Nobody signs in by this name.',
    remedy: 'Check the name; "fettle person add" makes somebody new.',
  });
}

/**
 * `fettle person add NAME --bench BENCH`: makes somebody an owner of a bench, which is started where there is none of
 * this name; the password is asked for, or the first line of the input. One who signs in already keeps their password.
 */
export const addOwner = (text: string, bench: string | undefined, env: NodeJS.ProcessEnv = process.env) =>
  answering(async () => {
    const signIn = named(text);
    if (!bench?.trim())
      throw refuse('bad-request', {
        place: '--bench',
        message: 'It is missing.',
        remedy: 'Say which bench they own: --bench "…".',
      });
    return withStore(env, async store => {
      const before = await personNamed(store, signIn);
      const id = before ?? (await makePerson(store, signIn, await readNewPassword()));
      return {
        signIn,
        new: before === undefined,
        bench: bench.trim(),
        id: await ownBench(store, id, bench.trim()),
      };
    });
  });

/** `fettle person link NAME`: prints a link by which they set a new password, once, within a day. */
export const linkFor = (text: string, env: NodeJS.ProcessEnv = process.env) =>
  answering(() =>
    withStore(env, async store => {
      const { accounts, port } = configurationOf(env);
      const word = await makePasswordLink(store, await known(store, named(text)));
      return { link: `${accounts?.origin ?? `http://127.0.0.1:${port}`}/new-password#${word}` };
    }),
  );

/** `fettle person erase NAME`: takes their name out of everything and ends their sign-in; what they did stays. */
export const erase = (text: string, env: NodeJS.ProcessEnv = process.env) =>
  answering(() =>
    withStore(env, async store => {
      const signIn = named(text);
      await erasePerson(store, await known(store, signIn));
      return { erased: signIn };
    }),
  );
