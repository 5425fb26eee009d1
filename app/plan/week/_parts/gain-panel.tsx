import { Panel } from '@/app/_shared/ui';
import { gainSentence } from '@/app/_shared/words/issue-words';
import type { IssueGain } from '@/lib/issue-order/week-list';

interface GainPanelProps {
  readonly gains: readonly IssueGain[];
  readonly partName: (partId: string) => string;
}

/** What planning the issues gained against each line taking the fullest edge as it comes. */
export function GainPanel({ gains, partName }: GainPanelProps) {
  if (gains.length === 0) return null;
  return (
    <Panel title="Against first come, first served">
      <ul>
        {gains.map((gain) => (
          <li key={gain.kind}>{gainSentence(gain, partName)}</li>
        ))}
      </ul>
      <p className="fine">
        Estimates from counts. They do not replace a look at the edge: what looks bad stays here, whatever the
        figures say.
      </p>
    </Panel>
  );
}
