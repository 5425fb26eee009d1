'use client';

import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import styles from './accept.module.css';
import { type LookInHand, type Preview, preview } from './live-look';

/** What will be recorded, in large words with the reason, while it is being filled in. */
export function ResultWords(look: LookInHand) {
  const result = preview(look);
  const { word, reasons, kind } = said(result);
  return (
    <div className={styles.result} data-kind={kind} role="status" aria-label="Result">
      <p className={styles.word}>
        <Shape kind={kind} />
        {word}
      </p>
      {reasons.map((reason) => (
        <p key={reason}>{reason}</p>
      ))}
    </div>
  );
}

type Kind = 'good' | 'hold' | 'refused' | 'asked';

function said(result: Preview): { word: string; reasons: readonly string[]; kind: Kind } {
  switch (result.kind) {
    case 'accepted':
      return { word: 'Accepted', reasons: ['Swab it, cap it, tag it.'], kind: 'good' };
    case 'held':
      return {
        word: 'Accepted, not releasable',
        reasons: [
          `No ${result.missing.map((role) => ROLE_LABEL[role]).join(', no ')} is recorded for it. A first-off or last-off does not count so.`,
        ],
        kind: 'hold',
      };
    case 'refused':
      return { word: 'Refused', reasons: result.faults.map(({ sentence }) => sentence), kind: 'refused' };
    case 'no-rule':
      return {
        word: 'Cannot be decided',
        reasons: ['No rule says how far NOT GO may run on. Ask the lead to write it on the job.'],
        kind: 'hold',
      };
    case 'asked':
      return { word: 'Not yet', reasons: [result.sentence], kind: 'asked' };
  }
}

/** A tick, a bar, a cross, a ring: the state is never told by colour alone. */
function Shape({ kind }: { readonly kind: Kind }) {
  const path = {
    good: 'M3 14l7 7 15-17',
    hold: 'M3 14h22',
    refused: 'M4 4l20 20M24 4L4 24',
    asked: 'M14 4a10 10 0 1 0 .01 0Z',
  }[kind];
  return (
    <svg viewBox="0 0 28 28" width="28" height="28" aria-hidden="true" focusable="false">
      <path d={path} fill="none" stroke="currentColor" strokeWidth="4" />
    </svg>
  );
}
