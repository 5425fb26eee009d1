'use client';

import { Cautions } from '@/app/_shared/cautions';
import { STOPS, type Stop } from '@/lib/shop/bench-input';
import { ChoiceSheet } from './choice-sheet';

interface StopSheetProps {
  readonly toolId: string;
  readonly onStop: (how: Stop) => void;
  readonly onBack: () => void;
}

/** Stop: one tap, no blame. The tool is set aside for a look, and its pieces are asked for where some broke off. */
export function StopSheet({ toolId, onStop, onBack }: StopSheetProps) {
  return (
    <ChoiceSheet
      title={`Stop ${toolId}`}
      lead="It is set aside for a look. Nobody is asked whose fault it was."
      choices={STOPS}
      onChoose={onStop}
      onBack={onBack}
    >
      <Cautions at="broken" signals="hidden" />
    </ChoiceSheet>
  );
}
