'use client';

import { useRef, useState } from 'react';
import { newDeviceId } from '@/app/_shared/form/device-id';
import type { BenchLine } from '@/lib/bench/bench-snapshot';
import { type BenchPress, type BenchTally, benchTallies } from '@/lib/bench/bench-tally';
import type { CountedEnds } from '@/lib/bench/edge-answer';
import { type BenchEntry, BenchEntrySchema, type Stop } from '@/lib/shop/bench-input';
import type { ReturnCondition } from '@/lib/shop/noun';
import type { BenchState } from '../_offline/bench-store';
import { keepSession, moveToOutbox, takeFromOutbox } from '../_offline/bench-store';
import type { Bench } from '../_offline/use-bench';

const UNDO_MS = 10_000;
/** What is handed over waits a little longer than it can be undone: it is never on its way while Undo still shows. */
const HELD_MS = UNDO_MS + 1500;

/** Something just done that can still be taken back. */
export interface Undoable {
  readonly what: string;
  readonly untilMs: number;
  readonly undo: () => Promise<void>;
}

export interface Work {
  readonly presses: readonly BenchPress[];
  readonly undoable: Undoable | undefined;
  readonly dropUndo: () => void;
  readonly countedOn: (toolId: string) => readonly CountedEnds[];
  readonly press: (press: BenchPress) => Promise<void>;
  readonly stop: (toolId: string, how: Stop) => Promise<void>;
  readonly giveBack: (toolId: string, condition: ReturnCondition) => Promise<void>;
  readonly finish: (tallies: readonly BenchTally[]) => Promise<void>;
}

/** The work in hand on one line: kept on the device at every press, and handed to what waits to be sent. */
export function useWork(bench: Bench, state: BenchState, line: BenchLine): Work {
  const [undoable, setUndoable] = useState<Undoable>();
  // The hand's own presses: read from the store once, then only written to it. A store read a moment too early, by a round
  // with the server, must never take a press back.
  const [presses, setPresses] = useState(
    () => state.sessions.find(({ lineId }) => lineId === line.id)?.presses ?? [],
  );
  const latest = useRef(presses);
  const handing = useRef(false);

  const keep = async (next: readonly BenchPress[]) => {
    latest.current = next;
    await keepSession({ lineId: line.id, presses: next });
    setPresses(latest.current);
    await bench.reread();
  };
  const offer = (what: string, untilMs: number, undo: () => Promise<void>) =>
    setUndoable({ what, undo, untilMs });

  const hand = async (entries: readonly BenchEntry[], left: readonly BenchPress[], what: string) => {
    // A second tap on the same button must not send the same work twice.
    if (handing.current) return;
    handing.current = true;
    const before = latest.current;
    const heldUntilMs = Date.now() + HELD_MS;
    latest.current = left;
    await moveToOutbox(
      { lineId: line.id, presses: left },
      entries.map((entry) => ({ entry, heldUntilMs })),
    );
    await bench.reread();
    setPresses(latest.current);
    handing.current = false;
    offer(what, Date.now() + UNDO_MS, async () => {
      const ids = entries.map(({ entryId }) => entryId);
      if (await takeFromOutbox(ids, { lineId: line.id, presses: before })) {
        latest.current = before;
        setPresses(before);
      }
      await bench.reread();
    });
  };

  return {
    presses,
    undoable,
    dropUndo: () => setUndoable(undefined),
    countedOn: (toolId) => [
      ...benchTallies(presses).filter((tally) => tally.toolId === toolId),
      ...state.outbox.flatMap(({ entry }) =>
        entry.kind === 'cut' && entry.toolId === toolId ? [entry] : [],
      ),
      ...state.sent.filter((sent) => sent.toolId === toolId),
    ],
    press: async (press) => {
      const before = latest.current;
      await keep([...before, press]);
      offer(pressWords(press), Date.now() + UNDO_MS, () => keep(before));
    },
    stop: async (toolId, how) => {
      const mine = benchTallies(latest.current).filter((tally) => tally.toolId === toolId);
      const stopped: BenchEntry = {
        ...{ kind: 'stop', toolId, how },
        ...{ entryId: newDeviceId(), deviceAtMs: Date.now() },
      };
      const left = latest.current.filter((press) => press.toolId !== toolId);
      await hand([...mine.map((tally) => cutEntry(tally, line)), stopped], left, `${toolId} stopped`);
    },
    giveBack: async (toolId, condition) => {
      const mine = benchTallies(latest.current).filter((tally) => tally.toolId === toolId);
      const back: BenchEntry = {
        ...{ kind: 'give-back', toolId, condition },
        ...{ entryId: newDeviceId(), deviceAtMs: Date.now() },
      };
      const left = latest.current.filter((press) => press.toolId !== toolId);
      await hand([...mine.map((tally) => cutEntry(tally, line)), back], left, `${toolId} given back`);
    },
    finish: async (tallies) => {
      const entries = tallies.filter(({ ends }) => ends > 0).map((tally) => cutEntry(tally, line));
      await hand(entries, [], 'Finished');
    },
  };
}

function pressWords(press: BenchPress): string {
  if (press.kind === 'reject') return 'One end rejected';
  return press.ends > 0 ? `+${press.ends}` : String(press.ends).replace('-', '−');
}

function cutEntry({ toolId, ends, goodEnds, rejects }: BenchTally, line: BenchLine): BenchEntry {
  return BenchEntrySchema.parse({
    kind: 'cut',
    ...{ entryId: newDeviceId(), deviceAtMs: Date.now() },
    ...{ toolId, ends, goodEnds, rejects: [...rejects] },
    ...{ connectionId: line.connection.id, materialId: line.materialId, heat: line.heat, jobLineId: line.id },
    fluidId: line.fluids[0]?.toolId ?? null,
  });
}
