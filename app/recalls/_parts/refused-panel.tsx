import { count, dayText } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import type { AcceptanceRecord } from '@/lib/ledger/acceptance-history';

interface RefusedPanelProps {
  readonly refused: readonly AcceptanceRecord[];
  readonly personName: (id: string) => string;
}

/** Ends that the gauge refused in the same time: they may have been good. */
export function RefusedPanel({ refused, personName }: RefusedPanelProps) {
  const ends = refused.reduce((sum, { endCount }) => sum + endCount, 0);
  return (
    <Panel title="Refused with it" aside={count(ends, 'end')}>
      <p>It may have refused good ends too. Where they are still there, gauge them again.</p>
      <ul className="stack-tight">
        {refused.map((look) => (
          <li key={look.id}>
            {count(look.endCount, 'end')}
            {look.jobLineId === null ? '' : ` of ${look.jobLineId}`}, {dayText(look.gaugedOnDay)},{' '}
            {personName(look.personId)}
          </li>
        ))}
      </ul>
    </Panel>
  );
}
