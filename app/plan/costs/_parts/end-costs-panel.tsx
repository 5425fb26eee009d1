import { money, whole } from '@/app/_shared/format';
import { EmptyState, Panel, Table } from '@/app/_shared/ui';
import { materialWords } from '@/app/_shared/words/material-words';
import type { EndCost } from '@/lib/end-costs/end-costs';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { connectionText } from '@/lib/shop/connection-text';

interface EndCostsProps {
  readonly rows: readonly EndCost[];
  readonly facts: ShopFacts;
  readonly currency: string;
  /** Whether the shop has said what a calibration costs. */
  readonly gaugesCounted: boolean;
}

/** Cost of a good end by size, service and material, cones and threads apart. */
export function EndCostsPanel({ rows, facts, currency, gaugesCounted }: EndCostsProps) {
  const each = (row: EndCost, minor: number | null) =>
    minor === null || row.goodEnds === 0 ? 'no price' : money(Math.round(minor / row.goodEnds), currency);
  const size = (id: string) => {
    const connection = facts.connections.find((known) => known.id === id);
    return connection === undefined ? id : connectionText(connection);
  };
  const material = (id: string) => {
    const known = facts.materials.find((row) => row.id === id);
    return known === undefined ? id : materialWords(known);
  };
  const gauges = {
    key: 'gauges',
    header: 'Gauges',
    numeric: true,
    cell: (row: EndCost) => each(row, row.gaugeMinor),
  };
  return (
    <Panel title="What a good end costs" aside="from the whole log">
      <Table
        caption="Cost of a good end, by size, service and material"
        phone="scroll"
        rows={rows}
        rowKey={({ connectionId, materialId, kind }) => `${connectionId} ${materialId} ${kind}`}
        empty={<EmptyState title="Nothing is logged yet">Costs come from the cut log.</EmptyState>}
        columns={[
          { key: 'size', header: 'Size', lead: true, cell: ({ connectionId }) => size(connectionId) },
          { key: 'material', header: 'Material', cell: ({ materialId }) => material(materialId) },
          { key: 'work', header: 'Work', cell: ({ kind }) => (kind === 'blade' ? 'cone' : 'thread') },
          { key: 'ends', header: 'Good ends', numeric: true, cell: ({ goodEnds }) => whole(goodEnds) },
          { key: 'edge', header: 'Edges', numeric: true, cell: (row) => each(row, row.edgeMinor) },
          { key: 'fluid', header: 'Fluid', numeric: true, cell: (row) => each(row, row.fluidMinor) },
          { key: 'spoilt', header: 'Spoilt ends', numeric: true, cell: (row) => each(row, row.spoiltMinor) },
          ...(gaugesCounted ? [gauges] : []),
          {
            key: 'all',
            header: 'In all',
            numeric: true,
            cell: ({ perGoodEndMinor }) =>
              perGoodEndMinor === null ? 'not known' : <b>{money(Math.round(perGoodEndMinor), currency)}</b>,
          },
        ]}
      />
      <p className="fine">
        A tool’s price and its regrinds are spread over the wear it took, harder materials counted by their
        factor; one that still cuts counts with the used part of a typical life of its kind. Fluid as planned
        for each end.{' '}
        {gaugesCounted
          ? 'Calibrations since the first end was accepted are spread over the ends accepted with each gauge, those of masters over all ends of their sizes.'
          : 'Gauges are not counted until you say below what a calibration costs.'}{' '}
        Prices as they stand today; no wages.
      </p>
    </Panel>
  );
}
