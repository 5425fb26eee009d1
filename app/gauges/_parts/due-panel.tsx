import Link from 'next/link';
import { listWords } from '@/app/_shared/format';
import { EmptyState, Panel, Table, ToolId } from '@/app/_shared/ui';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { DueMark } from './due-mark';
import type { GaugeView } from './gauge-view';
import { dueWords, untilWords } from './gauge-words';

/** What needs a decision: set aside, overdue, used up, due soon; with the jobs that will want it and what could stand in. */
export function DuePanel({ views, today }: { readonly views: readonly GaugeView[]; readonly today: string }) {
  const rows = views.filter(isPressing).sort((a, b) => pressure(a) - pressure(b));
  const first = rows.find(({ due, gauge }) => gauge.state !== 'lost' && isOver(due.standing));
  return (
    <Panel title="Due and set aside" aside="A calibration is valid to the end of its due day">
      <Table
        caption="Gauges that are due, overdue or set aside"
        rows={rows}
        rowKey={({ gauge }) => gauge.id}
        empty={
          <EmptyState title="Nothing is due">
            Every gauge is in date for two weeks at least, and none is set aside.
          </EmptyState>
        }
        columns={[
          {
            key: 'id',
            header: 'Gauge',
            lead: true,
            cell: (view) => (
              <Link href={`/gauges/${encodeURIComponent(view.gauge.id)}`} prefetch={false}>
                <ToolId id={view.gauge.id} />
              </Link>
            ),
          },
          { key: 'kind', header: 'Kind', cell: ({ gauge }) => ROLE_LABEL[gauge.role] },
          {
            key: 'stands',
            header: 'May accept',
            cell: (view) => <DueMark state={view.gauge.state} due={view.due} alarm={view === first} />,
          },
          {
            key: 'due',
            header: 'Due',
            cell: ({ gauge, due }) => dueWords(gauge.dueOnDay, due, today),
          },
          { key: 'jobs', header: 'Jobs', cell: (view) => <Jobs view={view} today={today} /> },
        ]}
      />
    </Panel>
  );
}

function isOver(standing: GaugeView['due']['standing']): boolean {
  return standing === 'overdue' || standing === 'ends-used';
}

function isPressing({ gauge, due, lapses }: GaugeView): boolean {
  return gauge.state === 'quarantined' || due.standing !== 'in-date' || lapses.length > 0;
}

/** Overdue first, then what is set aside, then what falls due, the soonest first. */
function pressure({ gauge, due }: GaugeView): number {
  if (gauge.state === 'lost') return 1e6;
  if (isOver(due.standing) || due.standing === 'none') return -1e6 + (due.daysLeft ?? 0);
  return gauge.state === 'quarantined' ? -1e5 : (due.daysLeft ?? 0);
}

function Jobs({ view, today }: { readonly view: GaugeView; readonly today: string }) {
  const [first] = view.lapses;
  if (first === undefined) return <>none runs past it</>;
  const jobs = listWords([...new Set(view.lapses.map(({ lineId }) => lineId))]);
  const twins = [...new Set(view.lapses.flatMap(({ twinIds }) => twinIds))];
  return (
    <>
      {jobs} {view.lapses.length === 1 ? 'runs' : 'run'} on; it may accept{' '}
      {untilWords(first.usableToDay, today)}.{' '}
      {twins.length === 0 ? 'No twin in date: send it early.' : `In date instead: ${listWords(twins, 'or')}.`}
    </>
  );
}
