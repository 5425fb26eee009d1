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
    client.pragma('journal_mode = WAL');
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
