import { factorText, volumeText } from '@/app/_shared/format';
import { Panel, Table } from '@/app/_shared/ui';
import { ratioQuantile } from '@/lib/fluid/use-ratio';
import { bottleRatio, learntUse } from '@/lib/outlook/fluid-facts';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { BottleLink } from './pick-panel';

/** How much really leaves the bottles beside what the drops would take, from the shop's own levels. */
export function UsePanel({ facts }: { readonly facts: ShopFacts }) {
  const { ratio, factor, uses } = learntUse(facts);
  const band = `${factorText(ratioQuantile(ratio, 0.1))} to ${factorText(ratioQuantile(ratio, 0.9))}`;
  return (
    <Panel
      title="Use, from your own levels"
      aside={`${uses.length === 0 ? 'no' : uses.length} bottles read twice`}
    >
      <div className="stack">
        <p>
          {uses.length === 0
            ? `No level was read twice yet, so the shop’s own figure of ${factorText(factor)} times the drops counts. Read a level now and then.`
            : `About ${factorText(ratio.mean)} times what the drops alone would take leaves the bottle, likely ${band}; the shop’s first figure was ${factorText(factor)}.`}
        </p>
        {uses.length === 0 ? null : (
          <Table
            caption="Measured and planned use by bottle"
            rows={uses}
            rowKey={(use) => use.toolId}
            columns={[
              { key: 'id', header: 'Bottle', lead: true, cell: (use) => <BottleLink id={use.toolId} /> },
              { key: 'measured', header: 'Gone', numeric: true, cell: (use) => volumeText(use.measuredMl) },
              { key: 'planned', header: 'By drops', numeric: true, cell: (use) => volumeText(use.plannedMl) },
              {
                key: 'ratio',
                header: 'Its ratio, drawn to the shop’s',
                numeric: true,
                cell: (use) => factorText(bottleRatio(facts, use.toolId).mean),
              },
            ]}
          />
        )}
        <p className="fine">
          Drops: 10 to a cone, 3 at the start of a thread and 3 at every second turn. A row of the log that
          names no bottle is shared among the bottles then open.
        </p>
      </div>
    </Panel>
  );
}
