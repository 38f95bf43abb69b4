/**
 * The driver (postgres 3.4.9) writes on the next turn of the event loop, and does not look whether its connection was
 * closed meanwhile: a PostgreSQL that dies at that moment would take the whole program down with "Cannot read
 * properties of null (reading 'write')" (github.com/porsager/postgres, issues 1066, 1154 and 1208). By then the driver
 * has already failed the transaction, so the write is moot and may be passed over. Its connection is of no more use
 * afterwards; `openStore` puts a new pool in the place of one that lost a connection.
 */
export function guardDriver(): void {
  if ('isGuarded' in globalThis.setImmediate) return;
  const guarded = new Proxy(globalThis.setImmediate, {
    apply(original, self, [work, ...rest]: Parameters<typeof setImmediate>) {
      const careful = work.name === 'nextWrite' ? () => unlessClosed(work) : work;
      return Reflect.apply(original, self, [careful, ...rest]);
    },
  });
  globalThis.setImmediate = Object.assign(guarded, { isGuarded: true });
}

function unlessClosed(write: () => void): void {
  try {
    write();
  } catch (error) {
    if (!(error instanceof TypeError && error.message.includes("reading 'write'"))) throw error;
  }
}
