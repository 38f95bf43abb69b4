import type { Server } from './server.ts';

/** `away` from the moment the folder's lock is lost until it is held again. */
export type ClusterState = 'here' | 'away';

/** A running PostgreSQL over a data folder that belongs to this process. */
export interface Cluster {
  /** The data folder as named; backups and the password lie there, PostgreSQL's own data mostly too. */
  readonly folder: string;
  /** PostgreSQL's own data. */
  readonly data: string;
  readonly server: Server;
  readonly hasRoom: () => Promise<boolean>;
  /** Makes the backup that is kept before a migration. */
  readonly beforeMigrating: (server: Server, version: number) => Promise<void>;
  isAway(): boolean;
  onChange(listener: (state: ClusterState) => void): void;
  /** Tells a second process on which port this one serves. */
  announce(port: number): Promise<void>;
  /** Stops PostgreSQL and gives the folder back. Close the store first. */
  close(): Promise<void>;
}
