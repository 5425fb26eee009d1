import type { Metadata } from 'next';
import { nowMs, today } from '@/app/_server/clock';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopNames } from '@/app/_server/names';
import { Breadcrumb, EmptyState, Panel, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { endsSinceIssue } from '@/db/queries/ends-since-issue';
import { listOpenFindings } from '@/db/queries/gauge-looks';
import { previewRecall } from '@/db/queries/recall-preview';
import { faultMeaning } from '@/lib/recall/fault-meaning';
import { FAULT_DIRECTIONS, type FaultDirection } from '@/lib/shop/recall';
import { CALIBRATED_ROLES, ROLE_LABEL, type Role } from '@/lib/shop/vocabulary';
import { doubtOf } from '../_parts/doubt-of';
import { FindForm } from '../_parts/find-form';
import { OpenForm } from '../_parts/open-form';
import { PreviewPanel } from '../_parts/preview-panel';
import { SinceIssuePanel } from '../_parts/since-issue-panel';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Open a recall' };

/** What would be listed if the gauge were found out now, and the opening itself. */
export default async function NewRecallPage({ searchParams }: PageProps<'/recalls/new'>) {
  const { gauge, entry, master } = await searchParams;
  const db = shopDb();
  const typed = typeof gauge === 'string' ? gauge : '';
  const doubt =
    typeof master === 'string'
      ? doubtOf(db, { gaugeId: typed, masterRecallId: master }, { onDay: today(), atMs: nowMs() })
      : undefined;
  const finding = listOpenFindings(db, typed.trim()).find(
    ({ entryId }) => doubt === undefined && (entry === undefined || entry === entryId),
  );
  const seen =
    typed === '' ? undefined : previewRecall(db, typed, finding?.entryId ?? null, today(), doubt?.until);
  const trail = [{ href: '/recalls', label: 'Recalls' }];
  if (seen === undefined || !CALIBRATED_ROLES.includes(seen.role))
    return (
      <div className="page">
        <Breadcrumb trail={trail} here="Open" />
        <TitleBlock title="Open a recall" lead="Which gauge was found out?" />
        {typed === '' || seen?.role === 'die' || seen?.role === 'blade' ? null : (
          <EmptyState title={`No gauge ${typed} is kept under calibration here`}>
            Check the mark, or look in the register of gauges.
          </EmptyState>
        )}
        {seen?.role === 'die' || seen?.role === 'blade' ? (
          <SinceIssuePanel
            toolId={seen.gaugeId}
            role={ROLE_LABEL[seen.role]}
            since={endsSinceIssue(db, seen.gaugeId)}
            sizeName={shopNames().connection}
            today={today()}
          />
        ) : null}
        <Panel title="Gauge">
          <FindForm />
        </Panel>
      </div>
    );
  return (
    <div className="page">
      <Breadcrumb trail={trail} here={seen.gaugeId} />
      <TitleBlock
        title={doubt === undefined ? `${seen.gaugeId} found out` : `${seen.gaugeId} in doubt`}
        lead={`A ${ROLE_LABEL[seen.role]}. It is set aside in the same step, and its ends are listed; nobody is asked how it came.`}
      />
      <PreviewPanel seen={seen} today={today()} />
      <Panel title="Open the recall">
        <OpenForm
          stamp={newStamp()}
          gaugeId={seen.gaugeId}
          finding={finding ?? null}
          doubt={doubt}
          today={today()}
          meanings={meaningsOf(seen.role)}
        />
      </Panel>
    </div>
  );
}

function meaningsOf(role: Role): Record<FaultDirection, string> {
  const entries = FAULT_DIRECTIONS.map((direction) => [
    direction,
    faultMeaning({ role, direction }).sentence,
  ]);
  return Object.fromEntries(entries) as Record<FaultDirection, string>;
}
