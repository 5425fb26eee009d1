import type { Route } from 'next';
import Link from 'next/link';
import { timesText } from '@/app/_shared/format';
import { ButtonLink, Panel, Table } from '@/app/_shared/ui';
import { bandOf } from '@/lib/ensemble/reasons';
import type { Outlook } from '@/lib/outlook/outlook';
import type { Material } from '@/lib/shop/noun';
import type { EdgeKind } from '@/lib/shop/vocabulary';

/** How much faster each material wears an edge: what was typed at first, and what the log says by now. */
export function MaterialTable({ outlook }: { outlook: Outlook }) {
  const learnt = (kind: EdgeKind, { id, isReference }: Material): string => {
    if (isReference) return '1×, the reference';
    const draws = outlook.ensemble.materialFactor(kind, id);
    if (draws === undefined) return 'nothing yet';
    const { low, median, high } = bandOf(draws);
    return `${timesText(median)} (${timesText(low)} to ${timesText(high)})`;
  };
  return (
    <Panel
      title="Materials"
      id="materials"
      aside={<ButtonLink href="/sizes/materials/new">Add a material</ButtonLink>}
    >
      <div className="stack">
        <p>
          How many times faster than in the reference material an edge wears. The band holds four times in
          five.
        </p>
        <Table
          caption="Wear factor of each material"
          rows={outlook.facts.materials}
          rowKey={({ id }) => id}
          columns={[
            {
              key: 'name',
              header: 'Material',
              lead: true,
              cell: ({ id, name, condition }) => (
                <Link href={`/sizes/materials/${encodeURIComponent(id)}` as Route} prefetch={false}>
                  {name}
                  {condition === '' ? null : `, ${condition}`}
                </Link>
              ),
            },
            {
              key: 'typed',
              header: 'First guess',
              cell: (material) =>
                material.isReference
                  ? '1×'
                  : `${timesText(material.factor)}, give or take ${timesText(material.factorGiveOrTake)}`,
            },
            { key: 'die', header: 'Dies, by now', cell: (material) => learnt('die', material) },
            { key: 'blade', header: 'Blades, by now', cell: (material) => learnt('blade', material) },
          ]}
        />
      </div>
    </Panel>
  );
}
