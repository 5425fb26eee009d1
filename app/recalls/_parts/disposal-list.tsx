import { count } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import type { DisposalRecord } from '@/lib/ledger/recall-history';
import { DISPOSITION_LABEL } from '@/lib/shop/recall';

interface DisposalListProps {
  readonly disposals: readonly DisposalRecord[];
  readonly personName: (id: string) => string;
  readonly moment: (ms: number) => string;
}

/** What was decided, by whom and on what grounds; like decisions of one moment are told together. */
export function DisposalList({ disposals, personName, moment }: DisposalListProps) {
  if (disposals.length === 0) return null;
  const told = new Map<string, { ends: number; one: DisposalRecord }>();
  for (const one of disposals) {
    const key = `${one.atMs} ${one.how} ${one.gaugeId} ${one.evidence} ${one.personId}`;
    told.set(key, { ends: (told.get(key)?.ends ?? 0) + one.endCount, one });
  }
  return (
    <Panel title="Decided">
      <ul className="stack-tight">
        {[...told].map(([key, { ends, one }]) => (
          <li key={key}>
            {count(ends, 'end')}: {DISPOSITION_LABEL[one.how]}
            {one.gaugeId === null ? '' : ` with ${one.gaugeId}`}
            {one.evidence === '' ? '' : `. ${one.evidence}`}{' '}
            <span className="fine">
              {personName(one.personId)}, {moment(one.atMs)}
            </span>
          </li>
        ))}
      </ul>
    </Panel>
  );
}
