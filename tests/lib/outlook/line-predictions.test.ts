import { expect, it } from 'vitest';
import type { Entry, PayloadOf } from '@/lib/ledger/event';
import { type JobLog, linePredictions } from '@/lib/outlook/line-predictions';
import { logBook } from '../../support/tool-log';

const LINE = {
  ...{ lineNo: 1, connectionId: '3-8-medium', materialId: '316-cw', heat: '', ends: 20 },
  ...{ startOnDay: '2026-03-02', dueOnDay: '2026-03-06', value: 'ordinary' as const },
  operations: ['thread' as const],
};
const SHOWN = { lineNo: 1, verdict: 'at-risk' as const, pMade: 0.6, ends: 20, edges: [] };
type Plan = PayloadOf<'job-set'>;
const plan = (over: Partial<Plan> = {}): Plan => ({
  id: 'J-1',
  title: '',
  lines: [LINE],
  shown: [SHOWN],
  ...over,
});

/** Two dies in the crib, the job planned, then what `after` says; a third die is not there when it is planned. */
function judged(
  after: (book: ReturnType<typeof logBook>, said: Entry[]) => void,
  orders = new Map<string, number>(),
) {
  const book = logBook();
  book.receive('D-1', 'die');
  book.receive('D-2', 'die');
  const said: Entry[] = [book.add('job-set', 'J-1', plan())];
  after(book, said);
  const jobs: JobLog[] = [{ jobId: 'J-1', entries: said }];
  return linePredictions(jobs, book.logs(), orders);
}
const settledOf = (...asked: Parameters<typeof judged>) => judged(...asked)[0]?.settled;
const cut = (book: ReturnType<typeof logBook>, toolId: string, ends: number) =>
  book.cut(toolId, ends, { jobLineId: 'J-1.1' });

// source: identity. What is judged is what was shown of the line.
it('keeps what was said of which line', () => {
  const [kept, ...more] = judged(() => {});
  expect(kept).toMatchObject({
    ...{ kind: 'line-made', probability: 0.6, settled: null },
    what: { lineId: 'J-1.1', ends: 20, byDay: '2026-03-06', connectionId: '3-8-medium' },
  });
  expect(more).toEqual([]);
});

// source: hand. Made with what was there; with a spare that was there; with one that came only afterwards.
it('is settled by the edges that made it', () => {
  expect(settledOf((book) => void cut(book, 'D-1', 20))).toMatchObject({
    outcome: true,
    reason: 'no-edge-wore-out',
  });
  const spare =
    (toolId: string, order: string | null = null) =>
    (book: ReturnType<typeof logBook>) => {
      cut(book, 'D-1', 12);
      book.end('D-1', 'worn');
      if (toolId === 'D-3') book.receive('D-3', 'die', { orderId: order });
      cut(book, toolId, 8);
    };
  expect(settledOf(spare('D-2'))).toMatchObject({ outcome: true, reason: 'spare-took-over' });
  expect(settledOf(spare('D-3'))).toMatchObject({ outcome: false, reason: 'further-edge' });
  // On order when it was said: counted on.
  expect(settledOf(spare('D-3', 'PO-1'), new Map([['PO-1', 60_000]]))).toMatchObject({ outcome: true });
  expect(settledOf(spare('D-3', 'PO-1'), new Map([['PO-1', 240_000]]))).toMatchObject({ outcome: false });
});

// source: hand. Dropped is not worn; rows of other lines, or from before it was said, do not count.
it('counts only wear, and only this line since', () => {
  const dropped = settledOf((book) => {
    cut(book, 'D-1', 12);
    book.end('D-1', 'dropped');
    book.receive('D-3', 'die');
    cut(book, 'D-3', 8);
  });
  expect(dropped).toMatchObject({ outcome: true });
  expect(settledOf((book) => void book.cut('D-1', 20))).toBeNull();
});

// source: hand. A line that became another one, or was closed before its ends were made, teaches nothing.
it('is void when the job is changed, cancelled or closed short', () => {
  const then = (kind: 'changed' | 'same' | 'done' | 'cancelled') =>
    settledOf((book, said) => {
      if (kind === 'changed')
        said.push(book.add('job-set', 'J-1', plan({ lines: [{ ...LINE, ends: 40 }], shown: [] })));
      else if (kind === 'same') said.push(book.add('job-set', 'J-1', plan({ title: 'renamed', shown: [] })));
      else said.push(book.add('job-closed', 'J-1', { how: kind }));
    });
  expect(then('changed')).toMatchObject({ outcome: null, reason: 'changed' });
  expect(then('same')).toBeNull();
  expect(then('done')).toMatchObject({ outcome: null, reason: 'closed-short' });
  expect(then('cancelled')).toMatchObject({ outcome: null, reason: 'cancelled' });
});
