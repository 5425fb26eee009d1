import { getTableConfig, type SQLiteTable } from 'drizzle-orm/sqlite-core';
import { expect, it } from 'vitest';
import * as schema from '@/db/schema';
import { testDb } from '../../support/db';

const { $client } = testDb();

interface Column {
  readonly name: string;
  readonly type: string;
  readonly notnull: number;
  readonly pk: number;
}

const tables = Object.values(schema).map((table) => getTableConfig(table as SQLiteTable));

it('the schema names exactly the tables that the migrations made, and all of them are strict', () => {
  const made = ($client.pragma('table_list') as { schema: string; name: string; strict: number }[]).filter(
    (table) => table.schema === 'main' && !table.name.startsWith('sqlite_'),
  );
  expect(made.map((table) => table.name).sort()).toEqual(tables.map((table) => table.name).sort());
  expect(made.filter((table) => table.strict !== 1)).toEqual([]);
});

it.each(tables.map((table) => [table.name, table] as const))(
  'table %s has the same columns in the schema and in the database',
  (name, table) => {
    const described = table.columns.map((column) => ({
      name: column.name,
      type: column.getSQLType().toUpperCase(),
      notnull: column.notNull,
      key:
        column.primary || table.primaryKeys.some((key) => key.columns.some((of) => of.name === column.name)),
    }));
    const made = ($client.pragma(`table_info(${name})`) as Column[]).map((column) => ({
      name: column.name,
      type: column.type,
      // source: published. SQLite documentation, STRICT tables: columns of the PRIMARY KEY are implicitly NOT NULL.
      notnull: column.notnull === 1 || column.pk > 0,
      key: column.pk > 0,
    }));
    expect(described).toEqual(made);
  },
);
