import Link from 'next/link';
import type { StudyState } from '@/app/_server/study';
import { count, money } from '@/app/_shared/format';
import { EmptyState, Panel, Table } from '@/app/_shared/ui';
import { LookAgain } from '@/app/_shared/ui/look-again';
import { roughMoney } from '@/app/plan/orders/_parts/proposal-words';
import { type RuleCost, ruleCosts } from '@/lib/end-costs/rule-costs';
import type { RuleCount } from '@/lib/end-costs/rule-counts';
import type { ShopBacktest } from '@/lib/outlook/shop-backtest';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import type { Costs } from '@/lib/shop/costs';

interface SavedProps {
  readonly state: StudyState<ShopBacktest>;
  readonly facts: ShopFacts;
  readonly costs: Costs;
  readonly currency: string;
}

/** What changing edges by the estimate would have saved over the fixed count, on the shop's own log. */
export function SavedPanel({ state, facts, costs, currency }: SavedProps) {
  const rows = ruleCosts(state.found?.rules ?? [], facts.parts, costs);
  return (
    <Panel title="What prediction saved" aside={<a href="/scorecard">how often it was right</a>}>
      {state.found === undefined ? (
        <p role="status" className="quiet">
          {state.failed
            ? 'It could not be worked out this time. It is tried again after the next entry in the log.'
            : 'The log is being gone through. Look again in a minute; this page does so by itself.'}
          {state.failed ? null : <LookAgain />}
        </p>
      ) : rows.length === 0 ? (
        <EmptyState title="Too little to compare">
          It needs parts with a first guess of their life, and edges that have cut.
        </EmptyState>
      ) : (
        <Compared rows={rows} facts={facts} currency={currency} />
      )}
      <p className="fine">
        The log is gone through row by row with what was known then. By the estimate an edge is changed before
        work that it would more likely not finish; by the count when its first guess would be passed. A
        planned change costs the edge and the change, one in mid-job the edge, the time lost and a spoilt end.
        The same ends are taken to have been cut either way. Edges and costs are priced as they stand today; a
        part with a handful of edges says little. By which age a change costs least stands under{' '}
        <Link href="/plan/replace">when to replace</Link>.
      </p>
    </Panel>
  );
}

function Compared({
  rows,
  facts,
  currency,
}: {
  rows: readonly RuleCost[];
  facts: ShopFacts;
  currency: string;
}) {
  const saved = rows.reduce((sum, { savedMinor }) => sum + (savedMinor ?? 0), 0);
  const name = (id: string) => facts.parts.find((part) => part.id === id)?.name ?? id;
  const per100 = (minor: number | null) =>
    minor === null ? 'not known' : money(Math.round(minor), currency);
  return (
    <div className="stack">
      <p>
        <strong>
          {saved >= 0
            ? `Over the whole log the estimate would have saved ${roughMoney(saved, currency)}.`
            : `Over the whole log the estimate would have cost ${roughMoney(-saved, currency)} more than the fixed count.`}
        </strong>
      </p>
      <Table
        caption="Changing by the estimate and by a fixed count, by part"
        phone="scroll"
        rows={rows}
        rowKey={({ partId }) => partId}
        columns={[
          { key: 'part', header: 'Part', lead: true, cell: ({ partId }) => name(partId) },
          { key: 'edges', header: 'Edges', numeric: true, cell: ({ edges }) => edges },
          { key: 'ours', header: 'By the estimate', cell: ({ predicted }) => ruleWords(predicted) },
          { key: 'fixed', header: 'At a fixed count', cell: ({ fixed }) => ruleWords(fixed) },
          {
            key: 'ours100',
            header: '100 ends, estimate',
            numeric: true,
            cell: (row) => per100(row.predictedPer100Minor),
          },
          {
            key: 'fixed100',
            header: '100 ends, count',
            numeric: true,
            cell: (row) => per100(row.fixedPer100Minor),
          },
        ]}
      />
    </div>
  );
}

function ruleWords({ planned, midJob, ends }: RuleCount): string {
  return `${planned} planned, ${midJob} in mid-job, over ${count(ends, 'end')}`;
}
