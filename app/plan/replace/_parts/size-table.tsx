import Link from 'next/link';
import { estimatedMoney, percent } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui';
import { changeAt, whyRun } from '@/app/_shared/words/replace-words';
import { sizeTextOf } from '@/app/plan/_parts/plan-rows';
import type { PartReplacement, ValueReplacement } from '@/lib/replacement/part-replacement';

interface SizeTableProps {
  readonly parts: readonly PartReplacement[];
  readonly currency: string;
}

/** By part: the age at which a change costs least, on ordinary work and on what cannot be remade, with the money. */
export function SizeTable({ parts, currency }: SizeTableProps) {
  const amount = (minor: number) => estimatedMoney(minor, currency);
  return (
    <Table
      caption="When to change, by part, and what it costs per 100 ends"
      rows={parts}
      rowKey={({ part }) => part.id}
      columns={[
        {
          key: 'part',
          header: 'Part',
          lead: true,
          cell: ({ part, kind, connection }) => (
            <>
              <Link href={`/wear/${encodeURIComponent(part.id)}`} prefetch={false}>
                {part.name}
              </Link>
              <br />
              <span className="fine">
                {kind === 'die' ? 'threads' : 'cones'} of {sizeTextOf([connection], connection.id)}
              </span>
            </>
          ),
        },
        { key: 'ordinary', header: 'Ordinary work', cell: ({ byValue }) => <Age value={byValue.ordinary} /> },
        {
          key: 'precious',
          header: 'Cannot be remade',
          cell: ({ byValue }) => <Age value={byValue.precious} />,
        },
        {
          key: 'planned',
          header: 'Changed then',
          numeric: true,
          cell: ({ byValue }) => amount(byValue.ordinary.plannedPer100Minor),
        },
        {
          key: 'run',
          header: 'Run to wear-out',
          numeric: true,
          cell: ({ byValue }) => amount(byValue.ordinary.runPer100Minor),
        },
      ]}
    />
  );
}

function Age({ value }: { readonly value: ValueReplacement }) {
  const why = whyRun(value);
  return (
    <>
      {changeAt(value)}
      <br />
      <span className="fine">{why === '' ? `saves ${percent(value.saving)}` : why}</span>
    </>
  );
}
