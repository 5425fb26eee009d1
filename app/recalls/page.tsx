import type { Metadata } from 'next';
import Link from 'next/link';
import { nowMs, today } from '@/app/_server/clock';
import { count, dayText, listWords } from '@/app/_shared/format';
import { EmptyState, Panel, Table, TitleBlock, ToolId } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import type { Db } from '@/db/open';
import { listOpenFindings } from '@/db/queries/gauge-looks';
import { gaugesOfMaster, gaugesUnreviewed } from '@/db/queries/master-recalls';
import { listRecalls } from '@/db/queries/recalls';
import { type RecallRecord, suspectEndsLeft } from '@/lib/ledger/recall-history';
import { RECALL_CAUSE_LABEL } from '@/lib/shop/recall';
import { FindForm } from './_parts/find-form';
import { FindingList } from './_parts/finding-list';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Recalls' };

/** Gauges found out whose ends are to be looked at, and the recalls: open ones first. */
export default function RecallsPage() {
  const db = shopDb();
  const findings = listOpenFindings(db);
  const recalls = listRecalls(db);
  return (
    <div className="page">
      <TitleBlock
        title="Recalls"
        lead="A gauge found out is set aside, and every end accepted with it since it was last known good is looked at again."
      />
      {findings.length === 0 ? null : (
        <Panel title="Found out, ends not yet listed">
          <FindingList findings={findings} today={today()} />
        </Panel>
      )}
      <Panel title="All recalls">
        <Table
          caption="Recalls, open ones first"
          rows={recalls}
          rowKey={({ id }) => id}
          empty={<EmptyState title="No recall yet">None of the gauges was found out so far.</EmptyState>}
          columns={[
            {
              key: 'id',
              header: 'Recall',
              lead: true,
              cell: ({ id }) => <Link href={`/recalls/${encodeURIComponent(id)}`}>{id}</Link>,
            },
            { key: 'gauge', header: 'Gauge', cell: ({ gaugeId }) => <ToolId id={gaugeId} /> },
            {
              key: 'why',
              header: 'Why',
              cell: ({ cause, foundOnDay }) =>
                `${RECALL_CAUSE_LABEL[cause]}, ${dayText(foundOnDay, today())}`,
            },
            { key: 'ends', header: 'Suspect', cell: (recall) => count(suspectEnds(recall), 'end') },
            {
              key: 'left',
              header: 'Stands',
              cell: (recall) => standsWords(recall, gaugesLeft(db, recall)),
            },
          ]}
        />
      </Panel>
      <Panel title="Found out at the bench">
        <FindForm />
      </Panel>
    </div>
  );
}

function suspectEnds({ suspects }: RecallRecord): number {
  return suspects.reduce((sum, { endCount }) => sum + endCount, 0);
}

/** Gauges that rest on it, where it is a master, and that nobody has looked at. */
function gaugesLeft(db: Db, recall: RecallRecord): number {
  if (recall.status === 'closed') return 0;
  return gaugesUnreviewed(gaugesOfMaster(db, recall, { onDay: today(), atMs: nowMs() })).length;
}

function standsWords(recall: RecallRecord, gauges: number): string {
  if (recall.status === 'closed') return 'closed';
  const left = suspectEndsLeft(recall);
  const words = [
    ...(left === 0 ? [] : [`${count(left, 'end')} to decide`]),
    ...(gauges === 0 ? [] : [`${count(gauges, 'gauge')} checked on it to review`]),
  ];
  return words.length === 0 ? 'open, all decided' : `open, ${listWords(words)}`;
}
