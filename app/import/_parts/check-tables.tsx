import { count, whole } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui';
import type { ImportCheck } from '@/db/commands/import-file';

/** What is wrong, row by row as the spreadsheet numbers them. */
export function ErrorTable({ check }: { readonly check: ImportCheck }) {
  const { errors, errorCount } = check;
  if (errorCount === 0) return null;
  return (
    <section className="stack" aria-labelledby="import-errors">
      <h3 id="import-errors">{count(errorCount, 'error')}</h3>
      {errorCount > errors.length ? (
        <p className="quiet">The first {errors.length} are listed; the others may have the same cause.</p>
      ) : null}
      <Table
        caption="Errors row by row"
        columns={[
          {
            key: 'where',
            header: 'Where',
            lead: true,
            cell: ({ rowNo, column }) => `row ${rowNo}${column === null ? '' : `, ${column}`}`,
          },
          { key: 'what', header: 'Fault', cell: ({ sentence }) => sentence },
        ]}
        rows={errors}
        rowKey={({ rowNo, column, sentence }) => `${rowNo} ${column} ${sentence}`}
      />
    </section>
  );
}

/** What should be known before importing, though it stops nothing. */
export function RemarkList({ check }: { readonly check: ImportCheck }) {
  const { remarks, remarkCount } = check;
  if (remarkCount === 0) return null;
  return (
    <section className="stack" aria-labelledby="import-remarks">
      <h3 id="import-remarks">Good to know first</h3>
      <ul className="stack-tight">
        {remarks.map(({ rowNo, sentence }) => (
          <li key={`${rowNo} ${sentence}`}>
            Row {rowNo}: {sentence}
          </li>
        ))}
      </ul>
      {remarkCount > remarks.length ? (
        <p className="quiet">And {whole(remarkCount - remarks.length)} more of them.</p>
      ) : null}
    </section>
  );
}

const STANDING = {
  new: 'new',
  'already-there': 'already there',
  'left-out': 'left out',
  error: 'error',
} as const;

/** The first rows as they are read. */
export function FirstRows({ check }: { readonly check: ImportCheck }) {
  if (check.firstRows.length === 0) return null;
  type Row = ImportCheck['firstRows'][number];
  return (
    <div className="stack">
      <h3>The first rows as they are read</h3>
      <Table
        caption="The first rows as they are read"
        phone="scroll"
        columns={[
          { key: 'row', header: 'Row', lead: true, numeric: true, cell: (row: Row) => row.rowNo },
          { key: 'standing', header: 'Is', cell: (row: Row) => STANDING[row.standing] },
          ...check.columns.map((key, at) => ({
            key,
            header: key,
            cell: (row: Row) => <span className="num">{row.cells[at]}</span>,
          })),
        ]}
        rows={check.firstRows}
        rowKey={(row) => String(row.rowNo)}
      />
    </div>
  );
}
