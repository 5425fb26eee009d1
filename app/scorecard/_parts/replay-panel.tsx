import type { StudyState } from '@/app/_server/study';
import { count, share } from '@/app/_shared/format';
import { EmptyState, Panel } from '@/app/_shared/ui';
import { LookAgain } from '@/app/_shared/ui/look-again';
import { tooLittle, wrongSentence } from '@/app/_shared/words/score-words';
import { CASES_TO_JUDGE } from '@/lib/outlook/score-summary';
import type { ShopBacktest } from '@/lib/outlook/shop-backtest';
import { SaidAgainstHappened, ScoreTable } from './score-tables';

/** "Had it been asked all along": the shop's whole log asked again, row by row, beside its fixed count. */
export function ReplayPanel({ state }: { state: StudyState<ShopBacktest> }) {
  const { found, working, failed } = state;
  return (
    <Panel title="Had it been asked all along">
      <div className="stack">
        <p>
          Your own log, gone through again: at every row, what would have been said of the edge finishing the
          work, from only what was known by then.
        </p>
        {working ? (
          <p role="status" className="quiet">
            {found === undefined
              ? 'It is being worked out. Look again in a minute; this page does so by itself.'
              : 'Something was entered since; it is being worked out anew. The figures below are from before: look again in a minute.'}
            {found === undefined ? <LookAgain /> : null}
          </p>
        ) : null}
        {failed ? (
          <p role="status">
            It could not be worked out this time. It is tried again after the next entry in the log.
          </p>
        ) : null}
        {found === undefined ? null : <Found found={found} />}
      </div>
    </Panel>
  );
}

function Found({ found }: { found: ShopBacktest }) {
  const { card } = found;
  const cases = card.ours?.count ?? 0;
  if (card.ours === undefined || cases < CASES_TO_JUDGE)
    return <EmptyState title="Too little to judge">{tooLittle(cases)}</EmptyState>;
  const { reliability, baseRate } = card.ours;
  return (
    <>
      <p>
        <strong>{wrongSentence(found)}</strong> {share(baseRate, 1)} of the work asked for was finished on the
        edge in hand.
        {card.voided === 0
          ? ''
          : ` ${count(card.voided, 'case')} could not be judged: lost, dropped or taken out good before the end.`}
      </p>
      <SaidAgainstHappened bins={reliability.bins} />
      <ScoreTable summary={found} />
      <p className="fine">
        Rows of the same edge are alike, so the bars are a little shorter than they should be. The fixed count
        is the first guess of each part, taken as “change it after so many ends”.
      </p>
    </>
  );
}
