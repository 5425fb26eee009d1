import { whole } from '@/app/_shared/format';
import { KeyValue, Panel } from '@/app/_shared/ui';
import { inTen, tooLittle, wrongSentence } from '@/app/_shared/words/score-words';
import { CASES_TO_JUDGE, type ScoreSummary } from '@/lib/outlook/score-summary';
import type { Score } from '@/lib/score/scored-case';
import { SaidAgainstHappened, ScoreTable } from './score-tables';

/** What was shown when tools went out for a job, kept as it was shown and judged by what followed. */
export function ShownPanel({ summary }: { summary: ScoreSummary }) {
  const { card } = summary;
  const cases = card.ours?.count ?? 0;
  return (
    <Panel title="As it was shown: tools">
      <div className="stack">
        <p>
          Whenever a blade or a die goes out for a job, what was said of it finishing the work is kept with
          the issue and judged by what follows.
        </p>
        <KeyValue
          items={[
            { label: 'Settled', value: whole(cases) },
            { label: 'Still open', value: whole(card.open) },
            {
              label: 'Cannot be judged',
              value: `${whole(card.voided)} (came back good, dropped or lost before the end)`,
            },
          ]}
        />
        {card.ours === undefined || cases < CASES_TO_JUDGE ? (
          <p className="quiet">{tooLittle(cases)}</p>
        ) : (
          <>
            <p>
              <strong>{wrongSentence(summary)}</strong>
            </p>
            <SaidAgainstHappened bins={card.ours.reliability.bins} />
            <ScoreTable summary={summary} />
          </>
        )}
      </div>
    </Panel>
  );
}

/** What the plan said of lines when their jobs were planned, judged once the lines were cut. Kept apart from the tools. */
export function LinesShownPanel({ summary }: { summary: ScoreSummary }) {
  const { card } = summary;
  const cases = card.ours?.count ?? 0;
  return (
    <Panel title="As it was shown: lines of the plan">
      <div className="stack">
        <p>
          Whenever a job is planned or changed, what was said of its lines is kept with it: the chance that
          the edges there, or on order, last for every end. It came true if no edge wore out or a spare took
          over, and not if one wore out and a further edge was needed.
        </p>
        <KeyValue
          items={[
            { label: 'Settled', value: whole(cases) },
            { label: 'Still open', value: whole(card.open) },
            {
              label: 'Cannot be judged',
              value: `${whole(card.voided)} (changed, cancelled or closed short)`,
            },
          ]}
        />
        {card.ours === undefined || cases < CASES_TO_JUDGE ? (
          <p className="quiet">
            {tooLittle(cases)}
            {card.ours === undefined
              ? ''
              : ` So far it said ${inTen(meanSaid(card.ours))} on average, and ${inTen(card.ours.baseRate)} came true.`}
          </p>
        ) : (
          <SaidAgainstHappened bins={card.ours.reliability.bins} />
        )}
      </div>
    </Panel>
  );
}

function meanSaid({ count, reliability }: Score): number {
  return reliability.bins.reduce((sum, bin) => sum + bin.count * bin.predicted, 0) / count;
}
