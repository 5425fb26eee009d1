'use client';

import type { ReturnCondition } from '@/lib/shop/noun';
import { ChoiceSheet } from './choice-sheet';

const CONDITIONS: readonly { readonly code: ReturnCondition; readonly label: string }[] = [
  { code: 'ok', label: 'In order' },
  { code: 'dull', label: 'Dull' },
  { code: 'damaged', label: 'Chipped' },
  { code: 'unsure', label: 'Set aside' },
];

interface GiveBackSheetProps {
  readonly toolId: string;
  readonly onCondition: (condition: ReturnCondition) => void;
  readonly onBack: () => void;
}

/** Back to the crib, its condition in one tap. What was counted on it goes with it. */
export function GiveBackSheet({ toolId, onCondition, onBack }: GiveBackSheetProps) {
  return (
    <ChoiceSheet title={`Give ${toolId} back`} choices={CONDITIONS} onChoose={onCondition} onBack={onBack} />
  );
}
