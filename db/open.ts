import SqliteDatabase from 'better-sqlite3';
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3';
import { deriveAnew } from './ledger/derive';
import { migrate, migrationsFolder } from './migrate';
import * as schema from './schema';

/** An open, migrated database. `$client` is the driver, for prepared statements in bulk work. */
export type Db = BetterSQLite3Database<typeof schema> & { $client: SqliteDatabase.Database };

/**
 * The one way to open a database, for the app, the seed and the tests alike: a file path, ':memory:', or the bytes of a
 * serialised database. Durable to the last acknowledged entry (WAL, full sync), foreign keys on, up to date.
 */
export function openDb(source: string | Buffer): Db {
  const client = new SqliteDatabase(source);
  try {
    client.pragma('busy_timeout = 5000');
    inTurn(() => client.pragma('journal_mode = WAL'));
    client.pragma('synchronous = FULL');
    client.pragma('foreign_keys = ON');
    client.pragma('trusted_schema = OFF');
    client.pragma('cache_size = -32000');
    migrate(client, migrationsFolder(), deriveAnew);
  } catch (error) {
    client.close();
    throw error;
  }
  return drizzle({ client, schema });
}

const PATIENCE_MS = 5000;
const PAUSE_MS = 20;

/**
 * Two processes may open a new file at one moment. The driver waits its turn for everything but the change of the journal,
 * which answers "locked" at once: so it is asked again until the other is done, as long as the driver would wait.
 */
function inTurn(ask: () => void): void {
  const pause = new Int32Array(new SharedArrayBuffer(4));
  for (let waitedMs = 0; ; waitedMs += PAUSE_MS) {
    try {
      ask();
      return;
    } catch (error) {
      const isLocked = error instanceof SqliteDatabase.SqliteError && error.code.startsWith('SQLITE_BUSY');
      if (!isLocked || waitedMs >= PATIENCE_MS) throw error;
      Atomics.wait(pause, 0, 0, PAUSE_MS);
    }
  }
}
