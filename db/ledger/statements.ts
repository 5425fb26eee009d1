import type { Database, Statement } from 'better-sqlite3';

const prepared = new WeakMap<Database, Map<string, Statement>>();

/** A statement prepared once per database and kept: the ledger's hot loops use nothing else. */
export function statement(client: Database, sql: string): Statement {
  let ofClient = prepared.get(client);
  if (ofClient === undefined) {
    ofClient = new Map();
    prepared.set(client, ofClient);
  }
  let found = ofClient.get(sql);
  if (found === undefined) {
    found = client.prepare(sql);
    ofClient.set(sql, found);
  }
  return found;
}

/** Inserts a row, or replaces it where `key` stands already; column names come from our own code, never from input. */
export function upsert(client: Database, table: string, key: string, row: Record<string, SqlValue>): void {
  const columns = Object.keys(row);
  const updates = columns
    .filter((column) => column !== key)
    .map((column) => `${column} = excluded.${column}`);
  const sql = `INSERT INTO ${table} (${columns.join(', ')}) VALUES (${columns.map(() => '?').join(', ')})
    ON CONFLICT (${key}) DO UPDATE SET ${updates.join(', ')}`;
  statement(client, sql).run(Object.values(row));
}

/** Inserts a row and gives its row number. */
export function insert(client: Database, table: string, row: Record<string, SqlValue>): number {
  const sql = insertSql(table, Object.keys(row));
  return Number(statement(client, sql).run(Object.values(row)).lastInsertRowid);
}

const insertsKept = new Map<string, { readonly columns: readonly string[]; readonly sql: string }>();

/** The text of an insert, kept per table while its columns stay the same: a long import would build it 100 000 times. */
function insertSql(table: string, columns: readonly string[]): string {
  const kept = insertsKept.get(table);
  const same =
    kept?.columns.length === columns.length && kept.columns.every((name, at) => name === columns[at]);
  if (kept !== undefined && same) return kept.sql;
  const sql = `INSERT INTO ${table} (${columns.join(', ')}) VALUES (${columns.map(() => '?').join(', ')})`;
  insertsKept.set(table, { columns, sql });
  return sql;
}

/** Removes the rows of `table` whose `column` is `id`. */
export function clear(client: Database, table: string, column: string, id: string): void {
  statement(client, `DELETE FROM ${table} WHERE ${column} = ?`).run(id);
}

export type SqlValue = string | number | null;

/** SQLite keeps a yes or no as 1 or 0. */
export function bit(yes: boolean): 0 | 1 {
  return yes ? 1 : 0;
}
