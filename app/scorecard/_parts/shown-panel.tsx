import { whole } from '@/app/_shared/format';
import { KeyValue, Panel } from '@/app/_shared/ui';
import { tooLittle, wrongSentence } from '@/app/_shared/words/score-words';
import { CASES_TO_JUDGE, type ScoreSummary } from '@/lib/outlook/score-summary';
import { SaidAgainstHappened, ScoreTable } from './score-tables';

/** What was shown when tools went out for a job, kept as it was shown and judged by what followed. */
export function ShownPanel({ summary }: { summary: ScoreSummary }) {
  const { card } = summary;
  const cases = card.ours?.count ?? 0;
  return (
    <Panel title="As it was shown">
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
