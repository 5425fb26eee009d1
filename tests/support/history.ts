import fc from 'fast-check';
import { endEdge, renewEdge } from '@/db/commands/end-edge';
import { issueTool, returnTool } from '@/db/commands/issue-tool';
import { openFluid, readFluidLevel } from '@/db/commands/keep-fluid';
import { logCut } from '@/db/commands/log-cut';
import { moveTool } from '@/db/commands/move-tool';
import { readEdge } from '@/db/commands/read-edge';
import { receiveTool } from '@/db/commands/receive-tool';
import { recordCalibration } from '@/db/commands/record-calibration';
import { correctCut, reverseEntry } from '@/db/commands/reverse-entry';
import type { Env, Recorded } from '@/db/ledger/ledger';
import type { Db } from '@/db/open';
import type { Actor } from '@/lib/access/actor';
import type { Result } from '@/lib/result';
import {
  CorrectCutInput,
  EndEdgeInput,
  IssueToolInput,
  LogCutInput,
  MoveToolInput,
  OpenFluidInput,
  ReadEdgeInput,
  ReadFluidLevelInput,
  ReceiveToolInput,
  RecordCalibrationInput,
  RenewEdgeInput,
  ReturnToolInput,
  ReverseEntryInput,
} from '@/lib/shop/command-input';
import { END_CAUSES, TOOL_STATES } from '@/lib/shop/vocabulary';
import { ASH, BLADE, BODY, DIE, FLUID, HIGH, MEDIUM, may, NOW_MS, QUARTER, RING, ROBIN } from './db';
import { gaugeDeed, gaugeSend } from './gauge-deeds';
import { careDeed, careSend } from './history-care';
import { markDeed, markSend } from './mark-deed';

const TOOLS = ['D-56-01', 'D-56-02', 'B-56-01', 'G-56-GO-1', 'F-L01', 'BDY-A'] as const;
const PART_OF = { D: DIE, B: BLADE, G: RING, F: FLUID } as const;

const toolId = fc.constantFrom(...TOOLS, ...TOOLS, ...TOOLS.slice(0, 3), ...TOOLS.slice(0, 3), 'D-NOWHERE');
/** Mostly what the shop has, so that histories get somewhere; now and then what it has not. */
const connectionId = fc.constantFrom(
  ...[MEDIUM.id, HIGH.id].flatMap((id) => Array(8).fill(id)),
  QUARTER.id,
  'none-high',
);
const materialId = fc.constantFrom(...['316', '2507'].flatMap((id) => Array(8).fill(id)), 'unobtainium');
const day = fc.constantFrom('2026-03-02', '2026-06-30', '2027-03-01');
const person = fc.constantFrom('robin', 'ash', 'nobody');
/** Which of the entries so far is meant, newest first, taken modulo their number: mostly a late one. */
const which = fc.oneof({ weight: 5, arbitrary: fc.nat(6) }, { weight: 1, arbitrary: fc.nat(200) });

/** One thing that somebody does, allowed or not. `which` picks an earlier entry, or stands for the tool received. */
const deed = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      do: fc.constant('cut' as const),
      ...{ toolId, connectionId, materialId, dry: fc.boolean(), rework: fc.boolean() },
      ends: fc.integer({ min: 1, max: 60 }),
      bad: fc.integer({ min: 0, max: 3 }),
      threadLength: fc.constantFrom(
        null,
        null,
        null,
        { typed: '12', unit: 'mm' },
        { typed: '12', unit: 'in' },
      ),
      cutAgoMs: fc.constantFrom(null, null, null, 0, 3_600_000, -60 * 3_600_000),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant('receive' as const),
      toolId: fc.constantFrom(...TOOLS, 'D-56-O1'),
      hand: fc.constantFrom('LH', 'LH', 'RH', null),
      opening: fc.oneof(
        fc.constant({ known: 'new' }),
        fc.constant({ known: 'unknown' }),
        fc.record({
          known: fc.constant('counted'),
          connectionId,
          materialId: fc.constantFrom('316', '2507', 'unobtainium'),
          ends: fc.integer({ min: 1, max: 90 }),
        }),
      ),
    }),
  },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('issue' as const), toolId, toPersonId: person }) },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('return' as const),
      toolId,
      condition: fc.constantFrom('ok', 'ok', 'dull', 'damaged', 'unsure'),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('move' as const),
      toolId,
      to: fc.constantFrom(...TOOL_STATES, 'in-crib', 'regrind', 'regrind', 'lost', 'scrapped'),
      reason: fc.constantFrom('', 'looked at'),
      backOnDay: fc.option(day, { freq: 3 }),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant('end' as const),
      toolId,
      cause: fc.constantFrom(...END_CAUSES.map((cause) => cause.code)),
      to: fc.constantFrom('regrind', 'quarantined', 'scrapped'),
      pieces: fc.constantFrom(undefined, 'owed', 'none'),
    }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('renew' as const), toolId, onDay: day }) },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant('calibrate' as const),
      toolId: fc.constantFrom('G-56-GO-1', 'G-56-GO-1', 'D-56-01'),
      result: fc.constantFrom('pass', 'fail'),
      dueOnDay: fc.option(day),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant('open' as const),
      toolId: fc.constantFrom('F-L01', 'F-L01', 'F-L01', 'D-56-01'),
      onDay: day,
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant('level' as const),
      toolId,
      levelMl: fc.integer({ max: 1000, min: 0 }),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant('read' as const),
      toolId,
      finding: fc.constantFrom(
        { method: 'grade', grade: 'light' },
        { method: 'flank-land', landMm: 0.1 },
        { method: 'ring', go: 'tight', notGoTurns: 1 },
      ),
    }),
  },
  { weight: 2, arbitrary: careDeed(toolId) },
  { weight: 2, arbitrary: gaugeDeed },
  { weight: 1, arbitrary: markDeed },
  { weight: 4, arbitrary: fc.record({ do: fc.constant('reverse' as const), which }) },
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant('correct' as const),
      which,
      rightToolId: fc.option(toolId, { freq: 5 }),
    }),
  },
);

type Deed = typeof deed extends fc.Arbitrary<infer D> ? D : never;

/** A history: who does what, on a device whose clock is off by so much. */
export const history = fc.array(
  fc.record({ deed, actor: fc.constantFrom(ROBIN, ASH), clockOffMs: fc.integer({ min: -9e7, max: 9e7 }) }),
  { minLength: 10, maxLength: 60, size: 'max' },
);
export type Act = typeof history extends fc.Arbitrary<(infer A)[]> ? A : never;

/** One command as a device sends it: it can be sent again, unchanged, at a later moment. */
export type Send = (db: Db, env: Env) => Result<Recorded>;

/** The IDs of the entries so far, newest first: all of them, and the rows of the cut log. */
export interface Past {
  readonly all: readonly string[];
  readonly cuts: readonly string[];
}

/** Turns an act into a command with a fixed entry ID; `past` is what was recorded so far. */
export function toSend({ deed, actor, clockOffMs }: Act, no: number, past: Past): Send {
  const entered = {
    entryId: `act-${String(no).padStart(5, '0')}`,
    deviceAtMs: NOW_MS + no * 60_000 + clockOffMs,
  };
  return commandOf(deed, actor, entered, past);
}

function commandOf(
  deed: Deed,
  actor: Actor,
  entered: { entryId: string; deviceAtMs: number },
  past: Past,
): Send {
  switch (deed.do) {
    case 'cut': {
      const { bad, cutAgoMs, ...row } = deed;
      const cutAtMs = cutAgoMs === null ? null : entered.deviceAtMs - cutAgoMs;
      const input = LogCutInput.parse({ ...entered, ...row, cutAtMs, goodEnds: Math.max(0, row.ends - bad) });
      return (db, env) => logCut(db, may('log-cut', actor), input, env);
    }
    case 'receive':
      return receiveSend(deed, actor, entered);
    case 'issue': {
      const input = IssueToolInput.parse({ ...entered, ...deed, jobLineId: null, bench: '4' });
      return (db, env) => issueTool(db, may('issue-tool', actor), input, env);
    }
    case 'return': {
      const input = ReturnToolInput.parse({ ...entered, ...deed });
      return (db, env) => returnTool(db, may('return-tool', actor), input, env);
    }
    case 'move': {
      const input = MoveToolInput.parse({ ...entered, ...deed });
      return (db, env) => moveTool(db, may('move-tool', actor), input, env);
    }
    case 'end': {
      const input = EndEdgeInput.parse({ ...entered, ...deed });
      return (db, env) => endEdge(db, may('end-edge', actor), input, env);
    }
    case 'renew': {
      const input = RenewEdgeInput.parse({ ...entered, ...deed });
      return (db, env) => renewEdge(db, may('renew-edge', actor), input, env);
    }
    case 'calibrate': {
      const input = RecordCalibrationInput.parse({
        ...entered,
        ...deed,
        onDay: '2026-03-02',
        certificate: '',
      });
      return (db, env) => recordCalibration(db, may('record-calibration', actor), input, env);
    }
    case 'open': {
      const input = OpenFluidInput.parse({ ...entered, ...deed });
      return (db, env) => openFluid(db, may('keep-fluid', actor), input, env);
    }
    case 'level': {
      const input = ReadFluidLevelInput.parse({ ...entered, ...deed, onDay: '2026-03-02' });
      return (db, env) => readFluidLevel(db, may('keep-fluid', actor), input, env);
    }
    case 'read': {
      const input = ReadEdgeInput.parse({ ...entered, ...deed, onDay: '2026-03-02' });
      return (db, env) => readEdge(db, may('read-edge', actor), input, env);
    }
    case 'care':
      return careSend(deed, actor, entered);
    case 'gauge':
      return gaugeSend(deed, actor, entered);
    case 'mark':
      return markSend(deed, actor, entered);
    case 'reverse': {
      const input = ReverseEntryInput.parse({
        ...entered,
        targetId: pick(past.all, deed.which),
        reason: 'a slip',
      });
      return (db, env) => reverseEntry(db, may('reverse-entry', actor), input, env);
    }
    case 'correct': {
      const { rightToolId } = deed;
      const input = CorrectCutInput.parse({
        ...entered,
        targetId: pick(deed.which < 6 ? past.cuts : past.all, deed.which),
        rightToolId,
      });
      return (db, env) => correctCut(db, may('reverse-entry', actor), input, env);
    }
  }
}

function receiveSend(
  deed: Extract<Deed, { do: 'receive' }>,
  actor: Actor,
  entered: { entryId: string; deviceAtMs: number },
): Send {
  const of = deed.toolId.startsWith('BDY') ? BODY : PART_OF[deed.toolId[0] as keyof typeof PART_OF];
  const input = ReceiveToolInput.parse({
    ...entered,
    ...deed,
    hand: of.hand === null ? null : deed.hand,
    partId: of.id,
    receivedOnDay: '2026-03-02',
    dueOnDay: of === RING ? '2026-12-31' : null,
  });
  return (db, env) => receiveTool(db, may('receive-tool', actor), input, env);
}

function pick(entryIds: readonly string[], which: number): string {
  return entryIds[which % Math.max(1, entryIds.length)] ?? 'nothing-yet';
}
