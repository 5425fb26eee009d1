import { describe, expect, it } from 'vitest';
import { logEvents } from '@/lib/outlook/log-events';
import { shopRecord } from '../../support/shop-record';
import { logBook } from '../../support/tool-log';

const tables = shopRecord();
const eventsOf = (book: ReturnType<typeof logBook>, lineEnds?: ReadonlyMap<string, number>) =>
  logEvents(book.logs(), { ...tables, ...(lineEnds && { lineEnds }) });

// source: hand. Each entry is told as what it means for the edge: 12 ends of 10.5 turns; the second edge of a blade has
// been reground once.
describe('a log as a replay takes it', () => {
  it('tells beginnings, rows, readings and ends in the order in which they were entered', () => {
    const book = logBook();
    book.receive('D-1', 'die');
    book.receive('B-1', 'blade');
    book.cut('D-1', 12, { goodEnds: 11, dry: true });
    book.add('edge-read', 'D-1', { finding: { method: 'grade', grade: 'at-limit' }, onDay: '2026-03-02' });
    book.end('B-1', 'dropped');
    book.end('D-1', 'worn');
    const events = eventsOf(book);
    expect(events.map(({ type, toolId }) => `${toolId} ${type}`)).toEqual([
      'D-1 began',
      'B-1 began',
      'D-1 cut',
      'D-1 read',
      'B-1 ended',
      'D-1 ended',
    ]);
    expect(events[2]).toMatchObject({
      ends: 12,
      goodEnds: 11,
      dry: true,
      rework: false,
      exposurePerEnd: 10.5,
    });
    expect(events[3]).toMatchObject({ edgeNo: 1, worn: 1 });
    expect(events[4]).toMatchObject({ how: 'incident' });
    expect(events[5]).toMatchObject({ how: 'worn' });
  });

  it('begins a new edge after a regrind, and ends one that is lost', () => {
    const book = logBook();
    book.receive('B-1', 'blade');
    book.end('B-1', 'worn');
    book.add('edge-renewed', 'B-1', { onDay: '2026-03-02' });
    book.add('tool-moved', 'B-1', { to: 'lost', backOnDay: null });
    expect(eventsOf(book).slice(2)).toMatchObject([
      { type: 'began', edgeNo: 2, regrinds: 1, kind: 'blade', odIn: 0.375, startKnown: true },
      { type: 'ended', edgeNo: 2, how: 'lost' },
    ]);
  });

  it('makes a counted start a row of its own, and says when the start is not known', () => {
    const book = logBook();
    const counted = {
      connectionId: '3-8-medium',
      materialId: '316-cw',
      ends: 40,
      exposureMicro: 420_000_000,
    };
    book.receive('D-1', 'die', { opening: { known: 'counted', ...counted } });
    book.receive('D-2', 'die', { opening: { known: 'unknown' } });
    expect(eventsOf(book)).toMatchObject([
      { type: 'began', toolId: 'D-1', startKnown: true },
      { type: 'cut', ends: 40, goodEnds: 40, exposurePerEnd: 10.5, opening: true },
      { type: 'began', toolId: 'D-2', startKnown: false },
    ]);
  });

  it('leaves out a reading whose limits leave no room, and a part that is for no size', () => {
    const book = logBook();
    book.receive('D-1', 'die');
    const limits = { pitchDiameterMm: 9, minMm: 9, maxMm: 9, instrument: 'wires' } as const;
    const finding = { method: 'pitch-diameter', ...limits } as const;
    book.add('edge-read', 'D-1', { finding, onDay: '2026-03-02' });
    book.receive('D-2', 'die', { partId: 'gone' });
    const gone = book.logs().map((log) => (log.toolId === 'D-2' ? { ...log, partId: 'gone' } : log));
    expect(logEvents(gone, tables).map(({ type }) => type)).toEqual(['began']);
  });
});

// source: hand. A line of 24 asks 24 of its first row; 10 good leave 14 for the next, on whatever tool; cones are counted
// apart; a row without a line, and one that outdoes its line, ask what they cut.
it('tells each row what its line still lacked', () => {
  const book = logBook();
  for (const id of ['D-1', 'D-2']) book.receive(id, 'die');
  book.receive('B-1', 'blade');
  book.cut('D-1', 12, { goodEnds: 10, jobLineId: 'J-1.1' });
  book.cut('D-2', 4, { jobLineId: 'J-1.1' });
  book.cut('B-1', 5, { jobLineId: 'J-1.1', operation: 'cone' });
  book.cut('D-1', 30, { jobLineId: 'J-1.1' });
  book.cut('D-1', 3);
  const asked = eventsOf(book, new Map([['J-1.1', 24]])).flatMap((event) =>
    event.type === 'cut' ? [event.askedEnds] : [],
  );
  expect(asked).toEqual([24, 14, 24, 30, undefined]);
});
