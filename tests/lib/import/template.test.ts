import { expect, it } from 'vitest';
import { readCsv } from '@/app/_import/read-csv';
import { IMPORT_KINDS } from '@/lib/import/column';
import { COLUMNS } from '@/lib/import/columns';
import { matchColumns } from '@/lib/import/match-columns';
import { templateCsv } from '@/lib/import/template';

it.each(IMPORT_KINDS)('templateCsv of %s is read with every column matched', (kind) => {
  const row = COLUMNS[kind].map((column) => column.example).join(',');
  const table = readCsv(new TextEncoder().encode(`${templateCsv(kind)}${row}\r\n`));
  if (!table.ok) throw new Error(table.refusal.sentence);
  const match = matchColumns(kind, table.value.header);
  expect(match.mapping).toEqual(COLUMNS[kind].map((column) => column.key));
  expect([match.missing, match.unread]).toEqual([[], []]);
});
