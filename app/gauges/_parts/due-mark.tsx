import { VerdictMark } from '@/app/_shared/ui';
import type { DueStanding } from '@/lib/gauge/due';
import type { ToolState } from '@/lib/shop/vocabulary';
import { acceptWord, mayAccept } from './gauge-words';

const SHAPE = { yes: 'can-make', soon: 'at-risk', no: 'cannot-make-now' } as const;

/** Whether ends may be accepted with a gauge: shape, word and colour together. */
export function DueMark({
  state,
  due,
  alarm = false,
}: {
  readonly state: ToolState;
  readonly due: DueStanding;
  readonly alarm?: boolean;
}) {
  return (
    <VerdictMark verdict={SHAPE[mayAccept({ state }, due)]} alarm={alarm}>
      {acceptWord(state, due)}
    </VerdictMark>
  );
}
