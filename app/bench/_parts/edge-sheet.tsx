'use client';

import type { BenchEdge, BenchLine } from '@/lib/bench/bench-snapshot';
import type { BenchPress } from '@/lib/bench/bench-tally';
import type { Stop } from '@/lib/shop/bench-input';
import type { ReturnCondition } from '@/lib/shop/noun';
import { CountPad } from './count-pad';
import { GiveBackSheet } from './give-back-sheet';
import { RejectSheet } from './reject-sheet';
import { StopSheet } from './stop-sheet';
import { TurnCounter } from './turn-counter';

export type Sheet = 'count' | 'reject' | 'stop' | 'turns' | 'back' | 'finish';

interface EdgeSheetProps {
  readonly sheet: Sheet;
  readonly line: BenchLine;
  readonly edge: BenchEdge;
  readonly onSheet: (sheet: Sheet) => void;
  readonly onPress: (press: BenchPress) => void;
  readonly onStop: (how: Stop) => void;
  readonly onGiveBack: (condition: ReturnCondition) => void;
}

/** What lies under the thumb for the edge in hand: the counts, or the question that one of them has opened. */
export function EdgeSheet({ sheet, line, edge, onSheet, onPress, onStop, onGiveBack }: EdgeSheetProps) {
  const { toolId, operation } = edge;
  const back = () => onSheet('count');
  if (sheet === 'count') return <CountPad edge={edge} onPress={onPress} onSheet={onSheet} />;
  if (sheet === 'reject')
    return (
      <RejectSheet
        operation={operation}
        onBack={back}
        onCause={(cause) => {
          onPress({ kind: 'reject', toolId, operation, cause });
          back();
        }}
      />
    );
  if (sheet === 'stop')
    return (
      <StopSheet
        toolId={toolId}
        onBack={back}
        onStop={(how) => {
          onStop(how);
          back();
        }}
      />
    );
  if (sheet === 'back')
    return (
      <GiveBackSheet
        toolId={toolId}
        onBack={back}
        onCondition={(condition) => {
          onGiveBack(condition);
          back();
        }}
      />
    );
  if (sheet === 'turns')
    return (
      <TurnCounter
        turnsPerEnd={line.turnsPerEnd}
        onBack={back}
        onEnd={() => onPress({ kind: 'ends', toolId, operation, ends: 1 })}
      />
    );
  return null;
}
