import { refuse } from '../../refusal.ts';
import type { Server } from '../server.ts';
import type { Manifest } from './manifest.ts';
import { verifyBackup } from './read-backup.ts';
import { besides, checkSchema } from './restore-backup.ts';
import { dropBeside } from './swap-databases.ts';
import { asKeeper, copyIn, copyOut, ofTheBench, snapshot, tablesInOrder } from './tables.ts';

/** A bench that was added: which, when its backup was made, and how many rows of each table came with it. */
export interface Added {
  bench: { id: string; name: string };
  madeAt: string;
  tables: { name: string; rows: number }[];
}

/** Somebody who is to own the bench: a person of this server, and what the bench calls them. */
export interface NewOwner {
  person: string;
  name: string;
}

/**
 * Adds the bench of a backup to those there are. It is checked whole, loaded into a database of its own at its own
 * schema version, compared row by row, migrated on, and only then copied over, in one transaction, with its owner
 * where people sign in. Refused where the bench is here already. Whatever goes wrong leaves everything as it was.
 */
export async function addBench(server: Server, file: string, owner: NewOwner | null): Promise<Added> {
  const manifest = await verifyBackup(file);
  const { bench } = manifest;
  if (!bench)
    throw refuse('backup-of-everything', {
      place: file,
      message: 'This holds everything of a place, and not one bench.',
      remedy: 'Make a backup of the one bench with "fettle backup FILE --bench NAME".',
    });
  await checkSchema(file, manifest);
  await refuseKnown(server, file, bench);
  const tables = await besides(server, file, manifest, async fresh => {
    const tables = await copyOver(server, fresh, bench.id, owner);
    await dropBeside(server, fresh.database);
    return tables;
  });
  return { bench, madeAt: manifest.madeAt, tables };
}

async function refuseKnown(
  server: Server,
  file: string,
  bench: NonNullable<Manifest['bench']>,
): Promise<void> {
  const known = await asKeeper(server, tx => tx`select 1 from workshop where workshop = ${bench.id}`);
  if (known.length > 0)
    throw refuse('already-there', {
      place: file,
      message: `The bench "${bench.name}" is here already.`,
      remedy: 'Nothing was changed. A bench is brought to a place once.',
    });
}

function copyOver(server: Server, fresh: Server, bench: string, owner: NewOwner | null) {
  return asKeeper(
    fresh,
    from =>
      asKeeper(server, async to => {
        const done: Added['tables'] = [];
        for (const table of (await tablesInOrder(from)).filter(ofTheBench)) {
          await copyIn(to, table, copyOut(from, table));
          const [counted] = await from.unsafe(`select count(*)::integer as rows from public."${table.name}"`);
          done.push({ name: table.name, rows: counted!.rows as number });
        }
        // The search engine, where there is one, hears of every part.
        await to`insert into outbox (workshop, kind, subject) select workshop, 'part', id from part where workshop = ${bench}`;
        if (owner) {
          const [member] = await to<{ id: string }[]>`
            insert into member (workshop, person, name, role)
            values (${bench}, ${owner.person}, ${owner.name}, 'owner') returning id`;
          await to`insert into audit (workshop, member, deed, about) values (${bench}, ${member!.id}, 'bench-started', '{}')`;
        }
        return done;
      }),
    snapshot,
  );
}
