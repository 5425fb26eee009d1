import { correctCut } from '../../db/commands/correct-cut';
import { type Act, act } from './act';
import { cut } from './crib-acts';
import type { CutDay } from './cut-days';
import type { DemoJob } from './jobs';
import { actorOf } from './people';

/** Month 17: forty ends were logged on one 3/8 die, and had been cut with the other. */
const WRONG_DIE = { monthsAgo: 17, rightId: 'D-38-03', loggedId: 'D-38-02', ends: 40 } as const;

const DAY_MS = 86_400_000;

/** Whether a share of a job is the one that was logged on the wrong die, in one row. */
export function isWrongDieRow(share: { job: DemoJob; dieId: string; ends: number }): boolean {
  const { job, dieId, ends } = share;
  return job.monthsAgo === WRONG_DIE.monthsAgo && dieId === WRONG_DIE.rightId && ends === WRONG_DIE.ends;
}

/** The row as it was logged, and its taking back and posting on the right die the next day. */
export function wrongDieActs(
  day: CutDay,
  atMs: number,
  row: { connectionId: string; materialId: string; heat: string; jobLineId: string },
): Act[] {
  const logged = { atMs, by: day.tech, toolId: WRONG_DIE.loggedId, mark: 'on the wrong die' };
  const mended = { atMs: atMs + DAY_MS, by: actorOf('lead-1'), name: 'mend the wrong die' };
  const reason = `Cut with ${WRONG_DIE.rightId}: the two dies lay side by side.`;
  return [
    cut(logged, { ...row, ends: day.ends, goodEnds: day.goodEnds, rejects: [] }),
    act({ ...mended, reason }, 'reverse-entry', (db, permit, entered, env, idOf) => {
      const targetId = idOf(`cut ${WRONG_DIE.loggedId} on the wrong die`);
      return correctCut(db, permit, { ...entered, targetId, rightToolId: WRONG_DIE.rightId }, env);
    }),
  ];
}
