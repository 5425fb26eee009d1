import { describe, expect, it } from 'vitest';
import { laterDay, queueLines } from '@/lib/capability/line-order';
import { planLine, TODAY } from '../../support/plan-shop';

// source: hand.
describe('queueLines', () => {
  it('serves by start, then due day, then line id', () => {
    const lines = [
      planLine({ lineId: 'd', startOnDay: '2026-03-10' }),
      planLine({ lineId: 'c', dueOnDay: '2026-03-14' }),
      planLine({ lineId: 'b' }),
      planLine({ lineId: 'a' }),
    ];
    expect(queueLines(lines, [], TODAY).map(({ line }) => line.lineId)).toEqual(['a', 'b', 'c', 'd']);
    expect(lines[0]?.lineId).toBe('d');
  });

  it('moves what is overdue to today and keeps its place', () => {
    const old = planLine({ lineId: 'z', startOnDay: '2026-02-01', dueOnDay: '2026-02-03' });
    const [first] = queueLines([planLine({ startOnDay: TODAY }), old], [], TODAY);
    expect(first).toMatchObject({ line: { lineId: 'z' }, startOnDay: TODAY, dueOnDay: TODAY });
  });

  it('knows the table row, and needs nothing for no ends', () => {
    const row = [{ connectionId: 'S', hand: 'RH' as const }];
    expect(queueLines([planLine()], row, TODAY)[0]).toMatchObject({ hand: 'RH', hasTableRow: true });
    expect(queueLines([planLine()], [], TODAY)[0]).toMatchObject({ hand: 'LH', hasTableRow: false });
    expect(queueLines([planLine({ endsToMake: 0 })], row, TODAY)[0]?.needs).toEqual([]);
  });

  it('throws on two lines of one id, and on negative ends', () => {
    expect(() => queueLines([planLine(), planLine()], [], TODAY)).toThrow('distinct ids');
    expect(() => queueLines([planLine({ endsToMake: -1 })], [], TODAY)).toThrow('ends of 0 or more');
  });
});

it('laterDay takes the later of two', () => {
  // source: hand.
  expect(laterDay('2026-03-01', '2026-02-28')).toBe('2026-03-01');
  expect(laterDay('2026-02-28', '2026-03-01')).toBe('2026-03-01');
});
