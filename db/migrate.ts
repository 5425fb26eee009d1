import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Database } from 'better-sqlite3';

/** The database was written by a newer Edgekeep: opening it here could lose what this version does not know. */
export class DatabaseTooNewError extends Error {
  override name = 'DatabaseTooNewError';
}

interface Migration {
  readonly version: number;
  readonly sql: string;
}

/**
 * Brings a database up to date, one transaction a step; `user_version` says how far it has come. `afterLast` runs within
 * the last step: either the database is at the newest version and that was done, or neither.
 */
export function migrate(
  client: Database,
  folder = migrationsFolder(),
  afterLast: (client: Database) => void = () => {},
): void {
  const migrations = readMigrations(folder);
  const newest = migrations.length;
  requireKnown(client, newest);
  for (const migration of migrations)
    step(client, migration, newest, migration.version === newest ? afterLast : () => {});
}

/** One step in one transaction of its own. The version is read inside it: two processes may open a new file at once. */
function step(
  client: Database,
  { version, sql }: Migration,
  newest: number,
  after: (client: Database) => void,
): void {
  if (requireKnown(client, newest) >= version) return;
  client
    .transaction(() => {
      if (requireKnown(client, newest) >= version) return;
      client.exec(sql);
      after(client);
      client.pragma(`user_version = ${version}`);
    })
    .immediate();
}

/** The version that the database is at; throws when it is newer than this program. */
function requireKnown(client: Database, newest: number): number {
  const at = client.pragma('user_version', { simple: true }) as number;
  if (at <= newest) return at;
  throw new DatabaseTooNewError(
    `This database is at version ${at}; this Edgekeep knows versions up to ${newest}. Start the newer Edgekeep that wrote it.`,
  );
}

export function migrationsFolder(): string {
  return path.join(/* turbopackIgnore: true */ process.cwd(), 'db', 'migrations');
}

/** Migrations are numbered without gaps, 0001_what_changed.sql on. */
function readMigrations(folder: string): Migration[] {
  const files = readdirSync(folder)
    .filter((name) => /^\d{4}_[a-z0-9_]+\.sql$/.test(name))
    .sort();
  return files.map((name, index) => {
    const version = Number(name.slice(0, 4));
    if (version !== index + 1)
      throw new Error(`Migration ${name} is out of order: expected number ${index + 1}.`);
    return { version, sql: readFileSync(path.join(folder, name), 'utf8') };
  });
}
