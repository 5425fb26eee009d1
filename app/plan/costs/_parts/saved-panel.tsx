import Link from 'next/link';
import type { StudyState } from '@/app/_server/study';
import { listWords } from '@/app/_shared/format';
import { EmptyState, Panel } from '@/app/_shared/ui';
import { LookAgain } from '@/app/_shared/ui/look-again';
import { type RuleCost, ruleCosts, wholeSaving } from '@/lib/end-costs/rule-costs';
import type { ShopBacktest } from '@/lib/outlook/shop-backtest';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import type { Costs } from '@/lib/shop/costs';
import { BreakEvenTable } from './break-even-table';
import { savedSentence } from './rule-words';
import { RulesTable } from './rules-table';

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
        The log is gone through row by row, both rules asked at the start of each with only what was known
        then. By the estimate an edge is changed where going on would cost more on average; by the count where
        its first guess would be passed. A planned change costs the edge and the change, one in mid-job the
        edge, the time lost and a spoilt end that can be remade. An edge that still cuts counts as having
        lasted at least so long; what follows a change is taken to have gone to a new edge. Edges and costs
        are priced as they stand today. By which age a change costs least stands under{' '}
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
  const nameOf = (id: string) => facts.parts.find((part) => part.id === id)?.name ?? id;
  const dearer = rows.filter(({ cheaper }) => cheaper === 'fixed').map(({ partId }) => nameOf(partId));
  return (
    <div className="stack">
      <p>
        <strong>{savedSentence(wholeSaving(rows), currency)}</strong>
        {dearer.length === 0 ? null : ` The count was cheaper for ${listWords(dearer)}.`}
      </p>
      <RulesTable rows={rows} nameOf={nameOf} currency={currency} />
      <BreakEvenTable rows={rows} nameOf={nameOf} currency={currency} />
    </div>
  );
}
