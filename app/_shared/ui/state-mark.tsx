/**
 * <StateMark state="issued" />                 where a tool stands: shape + word + colour
 * <VerdictMark verdict="at-risk" alarm? />     can the shop make this line
 * <ComingMark />                               not here today, here in time
 * <DieMark verdict="swap" alarm? />            will this die finish the job
 *
 * `alarm` turns the mark into the one red thing of the screen: give it to the costliest item only, and to nothing else.
 * `children` replaces the word (say "issued to Tech-2"); the shape keeps its meaning. `size` "l" for the bench.
 */
import type { ReactNode } from 'react';
import type { Verdict } from '@/lib/capability/line-verdict';
import type { DieVerdict } from '@/lib/outlook/die-verdict';
import { TOOL_STATE_LABEL, type ToolState } from '@/lib/shop/vocabulary';
import { MARK_SHAPE, type MarkShape } from './mark-shapes';
import styles from './state-mark.module.css';

type Tone = 'ready' | 'plain' | 'care' | 'gone' | 'stop';

const STATE_TONE: Record<ToolState, Tone> = {
  'in-crib': 'ready',
  issued: 'plain',
  regrind: 'plain',
  calibration: 'plain',
  quarantined: 'care',
  scrapped: 'gone',
  lost: 'gone',
};

const VERDICT: Record<Verdict, { word: string; tone: Tone }> = {
  'can-make': { word: 'can make', tone: 'ready' },
  'at-risk': { word: 'at risk', tone: 'care' },
  'cannot-make-now': { word: 'cannot make now', tone: 'stop' },
};

const DIE: Record<DieVerdict, { word: string; tone: Tone }> = {
  go: { word: 'go', tone: 'ready' },
  'go-with-standby': { word: 'go, with a standby', tone: 'care' },
  swap: { word: 'swap first', tone: 'stop' },
};

interface Common {
  readonly size?: 'm' | 'l';
  readonly children?: ReactNode;
}

export function StateMark({ state, size, children }: Common & { readonly state: ToolState }) {
  return (
    <Mark shape={state} tone={STATE_TONE[state]} size={size}>
      {children ?? TOOL_STATE_LABEL[state]}
    </Mark>
  );
}

export function VerdictMark({
  verdict,
  alarm,
  size,
  children,
}: Common & { readonly verdict: Verdict; readonly alarm?: boolean }) {
  const { word, tone } = VERDICT[verdict];
  return (
    <Mark shape={verdict} tone={tone} size={size} alarm={alarm}>
      {children ?? word}
    </Mark>
  );
}

/** Not here today, and here in time as far as is known. */
export function ComingMark({ size, children }: Common) {
  return (
    <Mark shape="coming" tone="plain" size={size}>
      {children ?? 'coming'}
    </Mark>
  );
}

export function DieMark({
  verdict,
  alarm,
  size,
  children,
}: Common & { readonly verdict: DieVerdict; readonly alarm?: boolean }) {
  const { word, tone } = DIE[verdict];
  return (
    <Mark shape={verdict} tone={tone} size={size} alarm={alarm}>
      {children ?? word}
    </Mark>
  );
}

interface MarkProps extends Common {
  readonly shape: MarkShape;
  readonly tone: Tone;
  readonly alarm?: boolean | undefined;
}

function Mark({ shape, tone, size = 'm', alarm = false, children }: MarkProps) {
  return (
    <span className={styles.mark} data-tone={alarm ? 'alarm' : tone} data-size={size}>
      <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
        {MARK_SHAPE[shape]}
      </svg>
      <span>{children}</span>
    </span>
  );
}
