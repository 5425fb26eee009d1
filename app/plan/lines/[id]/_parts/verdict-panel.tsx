import { chanceWords, count, dayText, inDays, percent } from '@/app/_shared/format';
import { Figure, KeyValue, Panel, VerdictMark } from '@/app/_shared/ui';
import { reasonSentence } from '@/app/_shared/words/reason-words';
import { releaseWords } from '@/app/_shared/words/release-words';
import { blockerSentences } from '@/app/plan/_parts/blocker-sentences';
import { onceHereWords, restsOnSentences, restsOnWords } from '@/app/plan/_parts/coming-words';
import { chanceSentence, endsSentence } from '@/app/plan/_parts/life-words';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { NeedCheck } from '@/lib/capability/set-checklist';
import { isByShare } from '@/lib/capability/word-blocker';
import type { Outlook } from '@/lib/outlook/outlook';
import { releaseHolds } from '@/lib/outlook/release-standing';
import type { LineFacts } from '@/lib/outlook/shop-facts';
import { EDGE_KINDS } from '@/lib/shop/vocabulary';

interface VerdictPanelProps {
  readonly row: PlanRow;
  readonly outlook: Outlook;
  readonly checks: readonly NeedCheck[];
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
}

/** Whether the line can be made, why not, and from when it could. */
export function VerdictPanel({ row, outlook, checks, today, lineLabel }: VerdictPanelProps) {
  const { verdict, endsToMake, requiredProbability } = row;
  const releasing = releaseWords(releaseHolds(lineInRecord(row, outlook)));
  if (endsToMake === 0)
    return (
      <Panel title="Verdict">
        <p>All ends are made. Close the job when the count agrees with the tags.</p>
        <p>Releasing: {releasing}.</p>
      </Panel>
    );
  const known = chanceSentence(verdict) !== '';
  const sentences = blockerSentences(verdict.blockers, lineLabel);
  const rests = restsOnSentences(checks, today, lineLabel);
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
          ) : rests.length > 0 ? (
            <p>Nothing is in the way, if what is not here today comes as said.</p>
          ) : (
            <p>The complete set is there, free and in date from the start through the due day.</p>
          )}
          {rests.length > 0 ? (
            <ul aria-label="Rests on what is not here today">
              {rests.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          ) : null}
          {known ? (
            <Figure
              value={chanceWords(verdict.pMade)}
              note={`that the edges last for ${count(endsToMake, 'end')}. This work asks for ${percent(requiredProbability)}. ${countsWords(row, outlook)}: ${endsSentence(verdict)}.`}
            />
          ) : null}
          {known ? <p className="fine">{restsOn(row, outlook)}</p> : null}
        </div>
        <KeyValue
          items={[
            {
              label: 'Cutting',
              value: verdict.canCut
                ? restsOnWords(checks, 'cut', today, lineLabel) || 'nothing missing'
                : 'something is missing',
            },
            {
              label: 'Accepting',
              value: verdict.canAccept
                ? restsOnWords(checks, 'accept', today, lineLabel) || 'gauges there and in date'
                : 'a gauge is missing or out of date',
            },
            { label: 'Releasing', value: releasing },
            { label: 'All clear', value: clearWords(row, checks, today) },
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

/** The line as the record of the figures has it, with what was accepted and what is owed on it. */
function lineInRecord({ line }: PlanRow, { facts }: Outlook): LineFacts {
  return facts.lines.find(({ id }) => id === line.id) ?? line;
}

/** What the ends of the line are counted over: "Blade and die together, after the lines before it, with what is on order". */
function countsWords({ line }: PlanRow, { facts }: Outlook): string {
  const kinds = EDGE_KINDS.filter((kind) => line.operations.includes(kind === 'blade' ? 'cone' : 'thread'));
  const whose = kinds.length > 1 ? 'Blades and dies together' : kinds[0] === 'blade' ? 'Blades' : 'Dies';
  const isOrdered = facts.orders.some(({ partId }) =>
    facts.parts.some(
      ({ id, role, fitsConnectionIds }) =>
        id === partId && kinds.some((kind) => kind === role) && fitsConnectionIds.includes(line.connectionId),
    ),
  );
  return `${whose}, after the lines before it${isOrdered ? ', with what is on order' : ''}`;
}

function clearWords({ verdict }: PlanRow, checks: readonly NeedCheck[], today: string): string {
  const { blockers, clearsOnDay } = verdict;
  if (blockers.length === 0) return onceHereWords(checks, today) || 'now';
  if (clearsOnDay === null) return 'no known date';
  return blockers.some(isByShare)
    ? `sure enough by ${dayText(clearsOnDay, today)}`
    : inDays(clearsOnDay, today);
}
