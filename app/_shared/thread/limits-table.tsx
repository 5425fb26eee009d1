/** <LimitsTable limits={…} />: limits of size of an external thread, in inches as the tables print them and in mm. */
import type { ExternalLimits } from '@/lib/thread/limits';
import { tableInches, tableMm } from '../format';
import { Table } from '../ui';

interface Row {
  readonly name: string;
  readonly max: number;
  readonly min: number | null;
}

export function LimitsTable({
  limits,
  caption,
}: {
  readonly limits: ExternalLimits;
  readonly caption: string;
}) {
  const rows: Row[] = [
    { name: 'Major diameter', max: limits.majorMaxIn, min: limits.majorMinIn },
    { name: 'Pitch diameter', max: limits.pitchMaxIn, min: limits.pitchMinIn },
    { name: 'Minor diameter, rounded root', max: limits.minorMaxUnrIn, min: null },
  ];
  return <LimitRows caption={caption} rows={rows} />;
}

/** Rows of limits, both units side by side. */
export function LimitRows({ caption, rows }: { readonly caption: string; readonly rows: readonly Row[] }) {
  const none = <span className="quiet">for reference</span>;
  return (
    <Table
      caption={caption}
      rows={rows}
      rowKey={({ name }) => name}
      columns={[
        { key: 'name', header: 'Diameter', lead: true, cell: ({ name }) => name },
        { key: 'max', header: 'Most, in', numeric: true, cell: ({ max }) => tableInches(max) },
        {
          key: 'min',
          header: 'Least, in',
          numeric: true,
          cell: ({ min }) => (min === null ? none : tableInches(min)),
        },
        { key: 'maxMm', header: 'Most, mm', numeric: true, cell: ({ max }) => tableMm(max, 'max') },
        {
          key: 'minMm',
          header: 'Least, mm',
          numeric: true,
          cell: ({ min }) => (min === null ? none : tableMm(min, 'min')),
        },
      ]}
    />
  );
}
