// biome-ignore-all lint/a11y/noRedundantRoles: a table laid out as cards loses its own roles in some browsers
/**
 * <Table caption="Dies in the crib" columns={[{ key: 'id', header: 'Tool', cell: (t) => <ToolId id={t.id} /> }, …]}
 *        rows={tools} rowKey={(t) => t.id} phone="cards" | "scroll" empty={<EmptyState …/>} />
 * A real table. `numeric` columns stand right-aligned in even figures; `lead` marks the column that names the row
 * (a row header, and the head of the card on a phone). On a phone rows become cards (default) or the table scrolls
 * sideways inside a region that the keyboard can reach. `captionShown` false keeps the caption for screen readers.
 */
import type { ReactNode } from 'react';
import styles from './table.module.css';

export interface Column<Row> {
  readonly key: string;
  readonly header: string;
  readonly cell: (row: Row) => ReactNode;
  readonly numeric?: boolean;
  readonly lead?: boolean;
}

interface TableProps<Row> {
  readonly caption: string;
  readonly captionShown?: boolean;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  readonly phone?: 'cards' | 'scroll';
  readonly empty?: ReactNode;
}

export function Table<Row>({
  caption,
  captionShown = false,
  columns,
  rows,
  rowKey,
  phone = 'cards',
  empty,
}: TableProps<Row>) {
  if (rows.length === 0 && empty) return <>{empty}</>;
  const table = (
    <table className={styles.table} data-phone={phone} role="table">
      <caption className={captionShown ? undefined : 'vh'}>{caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          {columns.map((column) => (
            <th
              key={column.key}
              scope="col"
              role="columnheader"
              data-numeric={column.numeric ? '' : undefined}
            >
              {column.header}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map((row) => (
          <tr key={rowKey(row)} role="row">
            {columns.map((column) => (
              <Cell key={column.key} column={column} row={row} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
  if (phone === 'cards') return table;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard (WCAG 2.1.1)
    <section className={styles.scroll} aria-label={caption} tabIndex={0}>
      {table}
    </section>
  );
}

function Cell<Row>({ column, row }: { readonly column: Column<Row>; readonly row: Row }) {
  const numeric = column.numeric ? '' : undefined;
  if (column.lead) {
    return (
      <th scope="row" role="rowheader" data-numeric={numeric}>
        {column.cell(row)}
      </th>
    );
  }
  return (
    <td role="cell" data-numeric={numeric} data-label={column.header}>
      <div>{column.cell(row)}</div>
    </td>
  );
}
