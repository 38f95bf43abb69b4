// Opens a data folder, writes to it without pause, and says each row once it is acknowledged.
//   node --import tsx hold-folder.ts FOLDER COMMON
import { randomUUID } from 'node:crypto';
import { openEmbedded } from '../../api/db/open-cluster.ts';
import { maker } from '../../api/db/schema/index.ts';
import { openStore } from '../../api/db/store.ts';
import { Refusal } from '../../api/refusal.ts';

const [folder, common] = process.argv.slice(2) as [string, string];
const tell = (line: string) => process.stdout.write(`${line}\n`);

try {
  const cluster = await openEmbedded(folder, { common, port: 4180, say: line => tell(`said ${line}`) });
  const store = await openStore(cluster);
  cluster.onChange(state => tell(`state ${state}`));
  let ending = false;
  const end = async () => {
    ending = true;
    await store.close();
    await cluster.close();
    tell('closed');
    process.exit(0);
  };
  process.once('SIGINT', end);
  process.once('SIGTERM', end);
  const [bench = randomUUID()] = await store.benches();
  if ((await store.benches()).length === 0) await store.createWorkshop({ id: bench, name: 'Quay Street' });
  tell(`ready ${process.pid}`);
  while (!ending) {
    const name = randomUUID();
    try {
      await store.inWorkshop(bench, tx => tx.insert(maker).values({ workshop: bench, name }));
      tell(`kept ${name}`);
    } catch (error) {
      tell(`refused ${error instanceof Refusal ? error.code : error}`);
      await new Promise(resolve => setTimeout(resolve, 20));
    }
  }
} catch (error) {
  tell(
    error instanceof Refusal
      ? `cannot ${error.code}: ${error.message} ${error.remedy}`
      : `failed ${(error as Error).stack}`,
  );
  process.exit(1);
}
