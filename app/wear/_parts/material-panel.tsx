import Link from 'next/link';
import { count, timesText } from '@/app/_shared/format';
import { Panel, Table } from '@/app/_shared/ui';
import { materialWords } from '@/app/_shared/words/material-words';
import type { KindMaterialWear, MaterialWear } from '@/lib/outlook/material-wear';
import type { Material } from '@/lib/shop/noun';
import type { EdgeKind } from '@/lib/shop/vocabulary';

interface MaterialPanelProps {
  readonly wears: readonly MaterialWear[];
  readonly reference: Material | undefined;
}

/** How much faster each material wears dies and blades, from the log, beside what was believed. */
export function MaterialPanel({ wears, reference }: MaterialPanelProps) {
  const than = reference === undefined ? 'the reference material' : materialWords(reference);
  return (
    <Panel title="Materials" id="materials">
      <div className="stack">
        <p>
          How many times faster than in {than} an edge wears. In brackets, where it lies four times in five.
        </p>
        <Table
          caption="Wear by material"
          rows={wears}
          rowKey={({ material }) => material.id}
          columns={[
            { key: 'name', header: 'Material', lead: true, cell: ({ material }) => materialWords(material) },
            {
              key: 'die',
              header: 'Dies, by now',
              cell: ({ kinds }) => <Learnt kind="die" wear={kinds.die} />,
            },
            {
              key: 'blade',
              header: 'Blades, by now',
              cell: ({ kinds }) => <Learnt kind="blade" wear={kinds.blade} />,
            },
            {
              key: 'before',
              header: 'First guess',
              cell: ({ kinds }) => bandText(kinds.die.effect?.believed),
            },
          ]}
        />
        <p className="fine">
          The first guesses are in the <Link href="/sizes">material table</Link>.
        </p>
      </div>
    </Panel>
  );
}

const CUT: Record<EdgeKind, string> = { die: 'thread', blade: 'cone' };

function Learnt({ kind, wear: { effect, ends } }: { kind: EdgeKind; wear: KindMaterialWear }) {
  return (
    <>
      {bandText(effect?.factor)}
      <span className="quiet">, {ends === 0 ? 'none cut yet' : `from ${count(ends, CUT[kind])}`}</span>
    </>
  );
}

function bandText(band: { low: number; median: number; high: number } | undefined): string {
  if (band === undefined) return 'nothing known';
  return `${timesText(band.median)} (${timesText(band.low)} to ${timesText(band.high)})`;
}
