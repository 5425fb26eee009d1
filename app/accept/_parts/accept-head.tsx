import Link from 'next/link';
import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { count, listWords } from '@/app/_shared/format';
import { Breadcrumb, HandText, TitleBlock } from '@/app/_shared/ui';
import { SizeWords } from '@/app/plan/_parts/size-drawing';
import { acceptedBeyondCut } from '@/lib/acceptance/cut-against-accepted';
import { turnsText } from '@/lib/acceptance/turns-text';
import type { AcceptanceRecord } from '@/lib/ledger/acceptance-history';
import type { AcceptView } from './accept-view';

interface AcceptHeadProps {
  readonly view: AcceptView;
  readonly materialText: string;
  /** The look whose ends are gauged again. */
  readonly repeated: AcceptanceRecord | undefined;
}

/** The size in hand, how many ends are accepted, and whose rule holds. */
export function AcceptHead({ view, materialText, repeated }: AcceptHeadProps) {
  const { line, connection, standing, rule } = view;
  const beyond = acceptedBeyondCut({ ...line, acceptedEnds: standing.acceptedEnds });
  return (
    <>
      <Breadcrumb
        trail={[
          { href: '/accept', label: 'Accept' },
          { href: `/plan/lines/${encodeURIComponent(line.id)}`, label: line.id },
        ]}
        here={repeated === undefined ? 'accept ends' : 'gauge again'}
      />
      <TitleBlock
        title={<SizeWords connection={connection} connectionId={line.connectionId} />}
        lead={`In ${materialText}${line.heat === '' ? '' : `, heat ${line.heat}`}. Job ${line.jobId}${line.jobTitle === '' ? '' : `: ${line.jobTitle}`}.`}
        drawing={connection ? <ConnectionEnd connection={connection} pxPerIn={56} /> : undefined}
        cells={[
          { label: 'Accepted', value: `${standing.acceptedEnds} of ${line.ends}` },
          { label: 'Releasable', value: releasableWords(view) },
          { label: 'Refused', value: count(standing.refusedEnds, 'end') },
          { label: 'Thread', value: connection ? <HandText hand={connection.hand} /> : 'not known' },
          {
            label: 'NOT GO at most',
            value: rule === null ? 'no rule written' : turnsText(rule.notGoTurnsMax),
          },
        ]}
      />
      {beyond === undefined ? null : (
        <p>
          {count(beyond, 'end')} more accepted than the log has cut good. Log what is missing on{' '}
          <Link href={`/plan/lines/${encodeURIComponent(line.id)}`}>line {line.id}</Link>, or take back what
          was counted twice.
        </p>
      )}
      {repeated === undefined ? null : (
        <p>
          Gauging again {count(repeated.endCount, 'end')} accepted on {repeated.gaugedOnDay}. It counts as of
          now; what was entered then stays.
        </p>
      )}
    </>
  );
}

/** None while a piece of a broken tool may lie in one of the tubes. */
function releasableWords({ standing, piecesOwed }: AcceptView): string {
  if (piecesOwed.length === 0) return count(standing.releasableEnds, 'end');
  return `none before the pieces of ${listWords(piecesOwed)} are found`;
}
