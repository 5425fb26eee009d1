import { chanceWords, count, inDays, percent } from '@/app/_shared/format';
import { Figure, KeyValue, Panel, VerdictMark } from '@/app/_shared/ui';
import { reasonSentence } from '@/app/_shared/words/reason-words';
import { releaseWords } from '@/app/_shared/words/release-words';
import { blockerSentences } from '@/app/plan/_parts/blocker-sentences';
import { chanceSentence, endsSentence } from '@/app/plan/_parts/life-words';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { Outlook } from '@/lib/outlook/outlook';
import { releaseHolds } from '@/lib/outlook/release-standing';

interface VerdictPanelProps {
  readonly row: PlanRow;
  readonly outlook: Outlook;
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
}

/** Whether the line can be made, why not, and from when it could. */
export function VerdictPanel({ row, outlook, today, lineLabel }: VerdictPanelProps) {
  const { verdict, endsToMake, requiredProbability } = row;
  if (endsToMake === 0)
    return (
      <Panel title="Verdict">
        <p>All ends are made. Close the job when the count agrees with the tags.</p>
        <p>Releasing: {releaseWords(releaseHolds(row.line))}.</p>
      </Panel>
    );
  const known = chanceSentence(verdict) !== '';
  const sentences = blockerSentences(verdict.blockers, lineLabel);
  return (
    <Panel title="Verdict">
      <div className="columns">
        <div className="stack">
          <div>
            <VerdictMark verdict={verdict.verdict} size="l" alarm={verdict.verdict === 'cannot-make-now'} />
          </div>
          {sentences.length > 0 ? (
            <ol>
              {sentences.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ol>
          ) : (
            <p>The complete set is there, free and in date from the start through the due day.</p>
          )}
          {known ? (
            <Figure
              value={chanceWords(verdict.pMade)}
              note={`that the edges last for ${count(endsToMake, 'end')}, after the lines before this one; ${endsSentence(verdict)}. This work asks for ${percent(requiredProbability)}.`}
            />
          ) : null}
          {known ? <p className="fine">{restsOn(row, outlook)}</p> : null}
        </div>
        <KeyValue
          items={[
            { label: 'Cutting', value: verdict.canCut ? 'nothing missing' : 'something is missing' },
            {
              label: 'Accepting',
              value: verdict.canAccept ? 'gauges there and in date' : 'a gauge is missing or out of date',
            },
            { label: 'Releasing', value: releaseWords(releaseHolds(row.line)) },
            { label: 'All clear', value: clearWords(verdict, today) },
          ]}
        />
      </div>
    </Panel>
  );
}

/** What the figure rests on, by the edge that would run out first; empty where no such edge is in the crib. */
function restsOn({ line, verdict, materialText }: PlanRow, { facts, forecast }: Outlook): string {
  const parts = facts.parts.filter(
    ({ role, fitsConnectionIds }) =>
      role === verdict.shorterEdge && fitsConnectionIds.includes(line.connectionId),
  );
  const cut = { connectionId: line.connectionId, materialId: line.materialId };
  for (const tool of facts.tools) {
    const known = parts.some(({ id }) => id === tool.partId) ? forecast(tool.id, cut) : undefined;
    if (known !== undefined) return `Rests on: ${reasonSentence(known.reasons, materialText)}`;
  }
  return '';
}

function clearWords({ blockers, clearsOnDay }: PlanRow['verdict'], today: string): string {
  if (blockers.length === 0) return 'now';
  return clearsOnDay === null ? 'no known date' : inDays(clearsOnDay, today);
}
