import { mkdtemp, rm } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { announced, announceServing, withdrawServing } from '../../../api/work/announce.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'announce-'));
});
afterEach(() => rm(folder, { recursive: true }));

const listening = async () => {
  const server = createServer((_, response) => response.end()).listen(0, '127.0.0.1');
  await new Promise(resolve => server.once('listening', resolve));
  return { server, address: `http://127.0.0.1:${(server.address() as AddressInfo).port}` };
};

test('a process that serves is found, with its key, until it takes that back', async () => {
  const { server, address } = await listening();
  const said = { pid: process.pid, address, key: 'k'.repeat(40) };
  await announceServing(folder, said);
  expect(await announced(folder)).toEqual(said);
  await withdrawServing(folder);
  expect(await announced(folder)).toBeNull();
  server.close();
});

test('one that was killed is not, though its number still stands for a process', async () => {
  const { server, address } = await listening();
  await announceServing(folder, { pid: process.pid, address, key: 'k'.repeat(40) });
  await new Promise(resolve => server.close(resolve));
  expect(await announced(folder)).toBeNull();
});

test('a folder that says nothing is served by nobody', async () => {
  expect(await announced(folder)).toBeNull();
});
