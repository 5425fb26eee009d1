import { expect, it } from 'vitest';
import { findLine, listClosedJobs, listLineEnds, listLinesOfJob, listOpenLines } from '@/db/queries/jobs';
import { BLADE, DIE, HIGH, MEDIUM, must, receive, testShop } from '../../support/db';
import { sender } from '../../support/send';

function line(lineNo: number, startOnDay: string, change = {}) {
  return {
    lineNo,
    connectionId: HIGH.id,
    materialId: '316',
    heat: 'H7',
    ends: 24,
    operations: ['cone', 'thread'],
    startOnDay,
    dueOnDay: '2026-03-20',
    value: 'ordinary',
    ...change,
  };
}

/** Two open jobs, one done, one cancelled. */
function shopWithJobs() {
  const db = testShop();
  const send = sender(db);
  must(send.plan({ id: 'J-1', title: 'First', lines: [line(1, '2026-03-12'), line(2, '2026-03-09')] }));
  must(send.plan({ id: 'J-2', title: '', lines: [line(1, '2026-03-09', { dueOnDay: '2026-03-13' })] }));
  for (const [id, how] of [
    ['J-3', 'done'],
    ['J-4', 'cancelled'],
  ] as const) {
    must(send.plan({ id, title: how, lines: [line(1, '2026-03-02')] }));
    must(send.close(id, how));
  }
  return { db, send };
}

// source: hand. By start, then due day, then line: J-2.1 and J-1.2 start on the 9th, J-2.1 is due first.
it('listOpenLines gives the lines of open jobs in the order of their days', () => {
  expect(listOpenLines(shopWithJobs().db).map(({ id }) => id)).toEqual(['J-2.1', 'J-1.2', 'J-1.1']);
});

// source: hand. Stated.
it('listLinesOfJob gives the lines of one job by number, whatever its status', () => {
  const { db } = shopWithJobs();
  expect(listLinesOfJob(db, 'J-1').map(({ lineNo }) => lineNo)).toEqual([1, 2]);
  expect(listLinesOfJob(db, 'J-4').map(({ jobStatus }) => jobStatus)).toEqual(['cancelled']);
  expect(listLinesOfJob(db, 'J-9')).toEqual([]);
});

// source: hand. What was planned is what is read.
it('findLine reads a line as it was planned', () => {
  const { db, send } = shopWithJobs();
  const assembly = { connectionId: MEDIUM.id, operations: ['assemble'], value: 'precious', ends: 2 };
  must(send.plan({ id: 'J-5', title: 'Fifth', lines: [line(7, '2026-03-09', assembly)] }));
  expect(findLine(db, 'J-5.7')).toEqual({
    ...line(7, '2026-03-09', assembly),
    id: 'J-5.7',
    jobId: 'J-5',
    jobTitle: 'Fifth',
    jobStatus: 'open',
    duty: 'ordinary',
    cleanedOnDay: null,
    goodCones: 0,
    goodThreads: 0,
  });
  expect(findLine(db, 'J-5.1')).toBeUndefined();
});

// source: hand. Threads 10 + 5 − 1 not good = 14, less the 5 − 1 of the row taken back = 10; cones 6; no job: none.
it('counts good cones and good threads of a line, without what was taken back', () => {
  const { db, send } = shopWithJobs();
  receive(db, 'D-56-01', DIE);
  receive(db, 'B-56-01', BLADE);
  const onLine = { jobLineId: 'J-1.1' };
  must(send.cut('D-56-01', 10, onLine));
  const second = must(send.cut('D-56-01', 5, { ...onLine, goodEnds: 4 }));
  must(send.cut('B-56-01', 6, onLine));
  must(send.cut('D-56-01', 3));
  const progress = () => {
    const { goodCones, goodThreads } = findLine(db, 'J-1.1') ?? {};
    return [goodCones, goodThreads];
  };
  expect(progress()).toEqual([6, 14]);
  must(send.reverse(second.id));
  expect(progress()).toEqual([6, 10]);
  expect(findLine(db, 'J-1.2')).toMatchObject({ goodCones: 0, goodThreads: 0 });
});

// source: hand. Stated: by number, the highest first, as many as asked for.
it('listClosedJobs gives those done and cancelled', () => {
  const { db } = shopWithJobs();
  expect(listClosedJobs(db)).toEqual([
    { id: 'J-4', title: 'cancelled', status: 'cancelled' },
    { id: 'J-3', title: 'done', status: 'done' },
  ]);
  expect(listClosedJobs(db, 1).map(({ id }) => id)).toEqual(['J-4']);
});

// source: hand. Every line asks for 24 ends, whether its job is open, done or cancelled.
it('listLineEnds gives the ends of every line, closed jobs too', () => {
  const ends = listLineEnds(shopWithJobs().db);
  expect([...ends.keys()].sort()).toEqual(['J-1.1', 'J-1.2', 'J-2.1', 'J-3.1', 'J-4.1']);
  expect(new Set(ends.values())).toEqual(new Set([24]));
});
