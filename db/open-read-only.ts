import SqliteDatabase from 'better-sqlite3';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import type { Db } from './open';
import * as schema from './schema';

/** Opens a database that is there already to read only, beside whoever writes to it. For work in a process of its own. */
export function openReadOnly(path: string): Db {
  const client = new SqliteDatabase(path, { readonly: true, fileMustExist: true });
  client.pragma('busy_timeout = 5000');
  client.pragma('trusted_schema = OFF');
  return drizzle({ client, schema });
}
