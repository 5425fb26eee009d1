import { count, money, percent } from '@/app/_shared/format';
import { Panel, Table } from '@/app/_shared/ui';
import { regrindWords, waitWords } from '@/app/plan/orders/_parts/proposal-words';
import type { OrderProposal } from '@/lib/orders/order-proposals';
import type { ShopFacts } from '@/lib/outlook/shop-facts';

/** Chance of running out with 0, 1, 2 … pieces more, and what they cost. */
export function PiecesPanel({
  proposal,
  facts,
}: {
  readonly proposal: OrderProposal;
  readonly facts: ShopFacts;
}) {
  const { byPieces, plannedBand, totalBand, quantity, outlook } = proposal;
  const currency = facts.shop?.currency ?? 'USD';
  return (
    <Panel title="With how many it lasts" aside={`the shop asks for ${percent(outlook.service)}`}>
      <p>
        The plan’s lines need {bandWords(plannedBand)}, four times in five; with work that is not on the books
        yet, at the pace of the last half year, {bandWords(totalBand)}. What is on order counts from the day
        on which its supplier is likely to bring it, as in the plan check.
        {regrindWords(proposal, facts.today)}
        {waitWords(proposal)}
      </p>
      <Table
        caption="Chance of running out by pieces ordered, arriving in time"
        rows={byPieces}
        rowKey={({ pieces }) => String(pieces)}
        columns={[
          {
            key: 'pieces',
            header: 'Ordered',
            lead: true,
            cell: ({ pieces }) => (pieces === quantity && quantity > 0 ? <b>{pieces}, proposed</b> : pieces),
          },
          { key: 'out', header: 'Runs out', numeric: true, cell: ({ stockOut }) => percent(stockOut) },
          {
            key: 'cost',
            header: 'Cost, the order’s own included',
            numeric: true,
            cell: ({ costMinor }) => (costMinor === null ? 'no price on record' : money(costMinor, currency)),
          },
        ]}
      />
    </Panel>
  );
}

function bandWords({ low, high }: { readonly low: number; readonly high: number }): string {
  if (high === 0) return 'no new one';
  return low === high ? count(low, 'new one') : `${low} to ${count(high, 'new one')}`;
}
