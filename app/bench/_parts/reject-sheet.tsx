'use client';

import { type CutOperation, REJECT_CAUSES, type RejectCause } from '@/lib/shop/vocabulary';
import { ChoiceSheet } from './choice-sheet';

const OF_CONE: readonly RejectCause[] = ['cone-finish', 'cone-angle', 'nicked', 'other'];
const OF_THREAD: readonly RejectCause[] = [
  'go-tight',
  'not-go-runs-on',
  'torn-thread',
  'crooked',
  'length',
  'nicked',
  'other',
];

interface RejectSheetProps {
  readonly operation: CutOperation;
  readonly onCause: (cause: RejectCause) => void;
  readonly onBack: () => void;
}

/** Why an end was refused: one tap. */
export function RejectSheet({ operation, onCause, onBack }: RejectSheetProps) {
  const codes = operation === 'cone' ? OF_CONE : OF_THREAD;
  return (
    <ChoiceSheet
      title="What is wrong with it?"
      label="Why the end is rejected"
      choices={REJECT_CAUSES.filter(({ code }) => codes.includes(code))}
      onChoose={onCause}
      onBack={onBack}
    />
  );
}
