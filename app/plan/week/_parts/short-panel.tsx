import Link from 'next/link';
import { chanceWords, listWords } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import type { ShortGroup } from '@/lib/issue-order/short-groups';

interface ShortPanelProps {
  readonly groups: readonly ShortGroup[];
  readonly partName: (partId: string) => string;
  readonly lineLabel: (lineId: string) => string;
}

/** Where the edges that are here may not do for all: in which order to cut if nothing more arrives in time. */
export function ShortPanel({ groups, partName, lineLabel }: ShortPanelProps) {
  if (groups.length === 0) return null;
  return (
    <Panel title="If the edges run short">
      <ul>
        {groups.map((group) => (
          <li key={`${group.kind} ${group.partId}`}>{sentence(group, partName, lineLabel)}</li>
        ))}
      </ul>
      <p className="quiet">
        Counted as if nothing more arrived. What is on order comes on top:{' '}
        <Link href="/plan/orders">orders</Link>.
      </p>
    </Panel>
  );
}

function sentence(
  { partId, toolIds, inTurn, best, allFinished }: ShortGroup,
  partName: (partId: string) => string,
  lineLabel: (lineId: string) => string,
): string {
  const lines = listWords(inTurn.lineIds.map(lineLabel));
  const have = `${partName(partId)}: ${listWords(toolIds)} must do for ${lines}; ${chanceWords(allFinished)} for all of them.`;
  const gain = best.finished - inTurn.finished;
  if (gain < 0.05) return `${have} The order of the plan is as good as any.`;
  const chances = best.lineIds.map((id, i) => `${lineLabel(id)} ${chanceWords(best.probabilities[i] ?? 0)}`);
  const [first = ''] = best.lineIds;
  return `${have} More gets done if ${lineLabel(first)} is cut first: ${listWords(chances)}. In the order of the plan ${lineLabel(inTurn.lineIds[0] ?? '')} has ${chanceWords(inTurn.probabilities[0] ?? 0)}.`;
}
