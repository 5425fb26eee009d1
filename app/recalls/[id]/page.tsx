import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { nowMs, timeZone, today } from '@/app/_server/clock';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopNames } from '@/app/_server/names';
import { momentText } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { AsItStood } from '@/app/gauges/_parts/as-it-stood';
import paper from '@/app/gauges/_parts/paper.module.css';
import { shopDb } from '@/db/client';
import { gaugesOfMaster, gaugesUnreviewed } from '@/db/queries/master-recalls';
import { readRecallSheet } from '@/db/queries/recall-sheet';
import { CloseForm, ReviewForm } from '../_parts/close-form';
import { DisposalList } from '../_parts/disposal-list';
import { DisposeForm } from '../_parts/dispose-form';
import { GaugesPanel } from '../_parts/gauges-panel';
import { openItems } from '../_parts/open-items';
import { RecallHead } from '../_parts/recall-head';
import { RefusedPanel } from '../_parts/refused-panel';
import { SuspectTable } from '../_parts/suspect-table';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/recalls/[id]'>): Promise<Metadata> {
  return { title: `Recall ${decodeURIComponent((await params).id)}` };
}

/** One recall: what may have passed, every suspect end by job and heat, what was decided, and the closing. Prints. */
export default async function RecallPage({ params }: PageProps<'/recalls/[id]'>) {
  const sheet = readRecallSheet(shopDb(), decodeURIComponent((await params).id));
  if (sheet === undefined) notFound();
  const { recall, suspects, refused } = sheet;
  const gauges = gaugesOfMaster(shopDb(), recall, { onDay: today(), atMs: nowMs() });
  const open = openItems(suspects);
  const names = shopNames();
  const shared = { personName: names.person };
  const stamped = { stamp: newStamp(), recallId: recall.id };
  return (
    <div className={`page ${paper.paper}`}>
      <RecallHead sheet={sheet} openedBy={names.person(recall.openedById)} />
      <AsItStood />
      <Panel title="Suspect ends" aside={recall.status === 'open' ? 'open' : 'closed'}>
        {suspects.length === 0 ? (
          <p className="quiet">No end was accepted with it in the window.</p>
        ) : (
          <SuspectTable rows={suspects} caption="Suspect ends, shipped ones first" {...shared} />
        )}
      </Panel>
      {gauges.length === 0 ? null : (
        <GaugesPanel masterId={recall.gaugeId} masterRecallId={recall.id} gauges={gauges} />
      )}
      {refused.length > 0 ? <RefusedPanel refused={refused} {...shared} /> : null}
      {open.length > 0 ? (
        <div className="no-print">
          <Panel title="Decide about ends" aside={`${open.reduce((sum, { ends }) => sum + ends, 0)} open`}>
            <DisposeForm key={recall.disposals.length} {...stamped} open={open} />
          </Panel>
        </div>
      ) : null}
      <DisposalList
        disposals={recall.disposals}
        personName={names.person}
        moment={(ms) => momentText(ms, timeZone())}
      />
      {recall.status === 'open' ? (
        <div className="stack-loose no-print">
          <ReviewForm {...stamped} stamp={newStamp()} />
          {open.length === 0 && gaugesUnreviewed(gauges).length === 0 ? (
            <Panel title="Close it">
              <CloseForm {...stamped} stamp={newStamp()} />
            </Panel>
          ) : null}
        </div>
      ) : null}
    </div>
  );
}
