import { describe, expect, it } from 'vitest';
import { askLine } from '@/lib/what-if/ways/ask-way';
import { datesFrom, laterStartWay, splitWay } from '@/lib/what-if/ways/date-ways';
import { question, without } from '../../../support/way-question';

describe('another day, or some ends now', () => {
  // source: identity. One day earlier the line cannot be made; on the day named it can.
  it('finds the earliest later start: not a day sooner', () => {
    const asked = question({ tools: without('DIE-1') }, { ends: 2 });
    expect(asked.verdict.verdict).toBe('cannot-make-now');
    const way = laterStartWay(asked);
    const [action] = way?.actions ?? [];
    if (action?.kind !== 'start') throw new Error('the die on order comes');
    expect(way?.verdict).toBe('can-make');
    const dayBefore = new Date(Date.parse(`${action.startOnDay}T00:00:00Z`) - 86_400_000)
      .toISOString()
      .slice(0, 10);
    expect(askLine(asked, [datesFrom(asked, dayBefore)])?.verdict).not.toBe('can-make');
  });

  // source: identity. Safe ends are those that are made with the required probability.
  it('splits a line that only life is short for', () => {
    const asked = question({ orders: [] }, { ends: 120 });
    const way = splitWay(asked);
    const safe = asked.verdict.safeEnds ?? 0;
    expect(safe).toBeGreaterThan(0);
    expect(way?.actions).toEqual([{ kind: 'split', endsNow: safe, endsLater: 120 - safe }]);
    expect(way?.verdict).toBe('can-make');
    expect(splitWay(question({ tools: without('GO-RING-1') }, { ends: 120 }))).toBeUndefined();
  });
});
