import type { Route } from 'next';
import Link from 'next/link';
import { chanceWords, dayText, money } from '@/app/_shared/format';
import { ButtonLink, Panel, Table, VerdictMark } from '@/app/_shared/ui';
import { wayWords } from '@/app/_shared/words/priced-way-words';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import { whatIfHref } from '@/app/plan/what-if/_parts/asked-changes';
import type { Outlook } from '@/lib/outlook/outlook';
import type { PricedWay } from '@/lib/what-if/ways/priced-way';
import { pricedWays } from '@/lib/what-if/ways/priced-ways';

/** What would make this line, the cheapest that keeps its dates on top; each with its price and a way to try it. */
export function PricedWaysPanel({ row, outlook }: { readonly row: PlanRow; readonly outlook: Outlook }) {
  const { facts, ensemble } = outlook;
  const line = facts.lines.find(({ id }) => id === row.line.id);
  if (line === undefined || row.endsToMake === 0) return null;
  const ways = pricedWays({ facts, ensemble, line, verdict: row.verdict });
  const currency = facts.shop?.currency ?? 'EUR';
  const ask = `/plan/what-if?lineId=${encodeURIComponent(line.id)}`;
  if (ways.length === 0)
    return (
      <div className="cluster no-print">
        <ButtonLink href={ask}>What if something changes</ButtonLink>
      </div>
    );
  return (
    <Panel title="Ways out, cheapest first" aside={<Link href={ask as Route}>Try something else</Link>}>
      <Table
        caption="What would make this line, with the price of it and what the plan then says"
        rows={ways}
        rowKey={wayKey}
        columns={[
          { key: 'what', header: 'What to do', lead: true, cell: (way) => wayWords(way, facts.today) },
          { key: 'cost', header: 'Costs', cell: (way) => costWords(way, currency) },
          {
            key: 'then',
            header: 'The line then',
            cell: (way) => (
              <div className="stack-tight">
                <VerdictMark verdict={way.verdict}>{splitWords(way)}</VerdictMark>
                {movedWords(way, facts.today)}
                {way.pMade > 0 ? (
                  <span className="quiet">{chanceWords(way.pMade)} that the edges last</span>
                ) : null}
              </div>
            ),
          },
          {
            key: 'try',
            header: 'Try it',
            cell: (way) =>
              way.changes.length === 0 ? (
                <span className="quiet">nothing to try yet</span>
              ) : (
                <Link href={whatIfHref(way.changes)} prefetch={false}>
                  On the plan<span className="vh">: {wayWords(way, facts.today)}</span>
                </Link>
              ),
          },
        ]}
      />
    </Panel>
  );
}

/** Two ways of buying differ by whom from. */
function wayKey({ actions }: PricedWay): string {
  return actions
    .map((action) =>
      action.kind === 'order' ? `order ${action.part.id} ${action.offer.supplier}` : action.kind,
    )
    .join();
}

function costWords({ costMinor, actions }: PricedWay, currency: string): string {
  if (costMinor === null) return 'price not written down';
  if (costMinor > 0) return money(costMinor, currency);
  return actions.some(({ kind }) => kind === 'start') ? 'nothing but the wait' : 'nothing to buy';
}

/** A way that must wait for a piece moves the line too, and says from when to when it then runs. */
function movedWords({ actions, changes }: PricedWay, today: string) {
  if (actions.some(({ kind }) => kind === 'start')) return null;
  return changes.map((change) =>
    change.kind === 'change-dates' ? (
      <b key={change.lineId}>
        but only {dayText(change.startOnDay, today)} to {dayText(change.dueOnDay, today)}
      </b>
    ) : null,
  );
}

/** A split line is made in part. */
function splitWords({ actions, verdict }: PricedWay): string | undefined {
  const [first] = actions;
  return first?.kind === 'split' && verdict === 'can-make'
    ? `can make the first ${first.endsNow}`
    : undefined;
}
