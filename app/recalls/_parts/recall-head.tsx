import Link from 'next/link';
import { dayAt } from '@/app/_server/clock';
import { count, dayText } from '@/app/_shared/format';
import { Breadcrumb, Notice, TitleBlock, ToolId } from '@/app/_shared/ui';
import { PrintButton } from '@/app/_shared/ui/print-button';
import type { RecallSheet, SuspectRow } from '@/db/queries/recall-sheet';
import { suspectEndsLeft } from '@/lib/ledger/recall-history';
import { RECALL_CAUSE_LABEL } from '@/lib/shop/recall';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { windowWords } from './window-words';

interface RecallHeadProps {
  readonly sheet: RecallSheet;
  readonly openedBy: string;
}

/** What was found, which way it is out and what that means; how many ends, where they are, how many are left. */
export function RecallHead({ sheet, openedBy }: RecallHeadProps) {
  const { recall, role, meaning, suspects } = sheet;
  const left = suspectEndsLeft(recall);
  const sum = (rows: readonly SuspectRow[]) => rows.reduce((total, { endCount }) => total + endCount, 0);
  const shipped = suspects.filter(({ shippedOnDay }) => shippedOnDay !== null);
  const checked = suspects.filter(({ independentlyChecked }) => independentlyChecked);
  return (
    <>
      <Breadcrumb trail={[{ href: '/recalls', label: 'Recalls' }]} here={recall.id} />
      <TitleBlock
        title={`Recall ${recall.id}`}
        lead={
          <>
            <Link href={`/tools/${encodeURIComponent(recall.gaugeId)}`}>
              <ToolId id={recall.gaugeId} />
            </Link>{' '}
            ({ROLE_LABEL[role]}) {RECALL_CAUSE_LABEL[recall.cause]} on {dayText(recall.foundOnDay)}:{' '}
            {recall.found}{' '}
            {recall.masterRecallId === undefined ? null : (
              <>
                See{' '}
                <Link href={`/recalls/${encodeURIComponent(recall.masterRecallId)}`}>
                  recall {recall.masterRecallId}
                </Link>
                .{' '}
              </>
            )}
            Suspect is what was accepted with it {windowWords(recall)}.
          </>
        }
        cells={[
          { label: 'Suspect', value: count(sum(suspects), 'end') },
          { label: 'Still to decide', value: left === 0 ? 'none' : count(left, 'end') },
          { label: 'Shipped', value: `${sum(shipped)} of ${sum(suspects)}` },
          { label: 'Checked independently', value: `${sum(checked)} of ${sum(suspects)}` },
          {
            label: recall.closedOnDay === null ? 'Opened, still open' : 'Opened',
            value: `${openedBy}, ${dayText(dayAt(recall.openedAtMs))}`,
          },
          ...(recall.closedOnDay === null ? [] : [{ label: 'Closed', value: dayText(recall.closedOnDay) }]),
        ]}
        actions={<PrintButton />}
      />
      <Notice
        level={meaning.urgency === 1 ? 'warning' : meaning.urgency === 2 ? 'caution' : 'notice'}
        title={meaning.urgency === 1 ? 'Look at these first.' : 'What may have passed.'}
      >
        {meaning.sentence}
      </Notice>
      {recall.conclusion === '' ? null : <p>Concluded: {recall.conclusion}</p>}
    </>
  );
}
