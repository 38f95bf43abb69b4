import { statfs } from 'node:fs/promises';

/** Free bytes on the disk of a folder, as an ordinary user may use them. */
async function freeBytes(folder: string): Promise<number> {
  const disk = await statfs(folder);
  return disk.bavail * disk.bsize;
}

/**
 * How much of the disk is kept free, in bytes: PostgreSQL needs room to write out what it has promised and to recover
 * after a crash, so new work stops before the disk is full. `FETTLE_RESERVE_MB`, else 64 MiB.
 */
export function reserveBytes(setting = process.env.FETTLE_RESERVE_MB): number {
  const megabytes = Number(setting);
  return (setting && Number.isFinite(megabytes) && megabytes >= 0 ? megabytes : 64) * 2 ** 20;
}

/** Says before each transaction whether there is room for new work. */
export function roomIn(folder: string, reserve = reserveBytes(), free = freeBytes): () => Promise<boolean> {
  return async () => (await free(folder)) >= reserve;
}
