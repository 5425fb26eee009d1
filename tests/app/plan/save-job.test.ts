import { expect, it } from 'vitest';
import { changeJob, enterJob } from '@/app/plan/jobs/_parts/save-job';
import { logCut } from '@/db/commands/log-cut';
import { listLinesOfJob } from '@/db/queries/jobs';
import { LogCutInput, PlanJobInput } from '@/lib/shop/command-input';
import { DIE, ENV, entered, MEDIUM, may, must, receive, sentence, testShop } from '../../support/db';

function line(lineNo: number, ends = 24) {
  return {
    lineNo,
    connectionId: MEDIUM.id,
    materialId: '316',
    heat: '',
    ends,
    operations: ['cone', 'thread'] as ('cone' | 'thread')[],
    startOnDay: '2026-03-02',
    dueOnDay: '2026-03-13',
    value: 'ordinary' as const,
  };
}

function input(lines: ReturnType<typeof line>[], entryId?: string) {
  const over = entryId === undefined ? {} : { entryId };
  return PlanJobInput.parse({ ...entered(over), job: { id: 'J-1', title: 'Trial', lines } });
}

const leave = () => may('plan-job');

// source: hand. Rules of the screen, each tried once from both sides.
it('enters a job once: a taken number is refused, the same sending is not', () => {
  const db = testShop();
  const first = input([line(1)], 'entry-of-the-device');
  expect(must(enterJob(db, leave(), first, ENV)).alreadyRecorded).toBe(false);
  expect(must(enterJob(db, leave(), first, ENV)).alreadyRecorded).toBe(true);
  expect(sentence(enterJob(db, leave(), input([line(1, 99)]), ENV))).toMatch(
    /^Job J-1 is already in the record/,
  );
  expect(listLinesOfJob(db, 'J-1').map(({ ends }) => ends)).toEqual([24]);
});

it('changes only a job that is there', () => {
  const db = testShop();
  expect(sentence(changeJob(db, leave(), input([line(1)]), ENV))).toBe('No job J-1 is in the record.');
  must(enterJob(db, leave(), input([line(1), line(2)]), ENV));
  must(changeJob(db, leave(), input([line(1, 30)]), ENV));
  expect(listLinesOfJob(db, 'J-1').map(({ ends }) => ends)).toEqual([30]);
});

it('does not drop a line on which ends are logged', () => {
  const db = testShop();
  must(enterJob(db, leave(), input([line(1), line(2)]), ENV));
  receive(db, 'D-56-01', DIE);
  const cut = LogCutInput.parse({
    ...entered(),
    toolId: 'D-56-01',
    connectionId: MEDIUM.id,
    materialId: '316',
    ends: 5,
    goodEnds: 5,
    jobLineId: 'J-1.2',
  });
  must(logCut(db, may('log-cut'), cut, ENV));
  expect(sentence(changeJob(db, leave(), input([line(1)]), ENV))).toMatch(/^Line 2 has ends logged on it/);
  must(changeJob(db, leave(), input([line(2)]), ENV));
  expect(listLinesOfJob(db, 'J-1').map(({ lineNo, goodThreads }) => [lineNo, goodThreads])).toEqual([[2, 5]]);
});
