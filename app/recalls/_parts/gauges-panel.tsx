import type { Route } from 'next';
import Link from 'next/link';
import { count, dayText } from '@/app/_shared/format';
import { Panel, Table, ToolId } from '@/app/_shared/ui';
import type { GaugeOfMaster } from '@/db/queries/master-recalls';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';

interface GaugesPanelProps {
  readonly masterId: string;
  readonly masterRecallId: string;
  readonly gauges: readonly GaugeOfMaster[];
}

/** The gauges that were checked or set on a master in the time it is in doubt: each follows with a recall of its own. */
export function GaugesPanel({ masterId, masterRecallId, gauges }: GaugesPanelProps) {
  const open = gauges.filter(({ standing, recallId }) => standing === 'in-doubt' && recallId === null).length;
  return (
    <Panel
      title={`Checked or set on ${masterId}`}
      aside={open === 0 ? 'none left to review' : `${count(open, 'gauge')} to review`}
    >
      <Table
        caption={`Gauges checked or set on ${masterId} since its last good evidence`}
        rows={gauges}
        rowKey={({ gaugeId }) => gaugeId}
        columns={[
          {
            key: 'gauge',
            header: 'Gauge',
            lead: true,
            cell: ({ gaugeId, role }) => (
              <>
                <Link href={`/gauges/${encodeURIComponent(gaugeId)}`} prefetch={false}>
                  <ToolId id={gaugeId} />
                </Link>
                , {ROLE_LABEL[role]}
              </>
            ),
          },
          { key: 'last', header: 'Last on it', cell: lastWords },
          {
            key: 'ends',
            header: 'Ends in doubt',
            cell: ({ standing, endsInDoubt }) =>
              standing === 'in-doubt' ? count(endsInDoubt, 'end') : 'none',
          },
          {
            key: 'stands',
            header: 'Stands',
            cell: (gauge) => <Stands gauge={gauge} masterRecallId={masterRecallId} />,
          },
        ]}
      />
    </Panel>
  );
}

function lastWords({ last, count: times }: GaugeOfMaster): string {
  const what = last.kind === 'calibration' ? 'set' : last.asLeft === 'in' ? 'passed' : 'did not pass';
  return `${what} ${dayText(last.onDay)}${times > 1 ? `, ${times} times in all` : ''}`;
}

function Stands({
  gauge: { gaugeId, standing, clearedBy, recallId },
  masterRecallId,
}: {
  readonly gauge: GaugeOfMaster;
  readonly masterRecallId: string;
}) {
  if (recallId !== null)
    return <Link href={`/recalls/${encodeURIComponent(recallId)}`}>recall {recallId}</Link>;
  if (standing === 'cleared')
    return <>found good since by something else, {clearedBy === null ? '' : dayText(clearedBy.onDay)}</>;
  if (standing === 'not-passed') return <>may have been good: check it on another master</>;
  const address = `/recalls/new?${new URLSearchParams({ gauge: gaugeId, master: masterRecallId })}`;
  return (
    <>
      in doubt. <Link href={address as Route}>Open its recall</Link>
    </>
  );
}
