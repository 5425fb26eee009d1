import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LookFacts, lineStanding } from '@/lib/acceptance/line-standing';

const look = (id: string, endCount: number, over: Partial<LookFacts> = {}): LookFacts => ({
  ...{ id, endCount, decision: 'accepted', gaugesMissing: [], regaugesId: null },
  ...over,
});
const suspect = (acceptanceId: string, openEnds: number, goneEnds = 0) => ({
  ...{ acceptanceId, recallId: 'R', openEnds, goneEnds },
});

// source: hand. Counted end by end.
describe('how it stands with a line', () => {
  it('counts what was accepted, and what was refused apart', () => {
    const looks = [look('a', 5), look('b', 2, { decision: 'refused' })];
    expect(lineStanding(looks, [])).toEqual({ acceptedEnds: 5, releasableEnds: 5, refusedEnds: 2, held: [] });
  });

  it('Q17: an end accepted with no gauge recorded is held until it is gauged again now', () => {
    const blind = look('a', 3, { gaugesMissing: ['go-ring'] });
    expect(lineStanding([blind], [])).toMatchObject({
      ...{ acceptedEnds: 3, releasableEnds: 0 },
      held: [{ acceptanceId: 'a', ends: 3, why: 'no-gauge', gaugesMissing: ['go-ring'] }],
    });
    const again = look('b', 2, { regaugesId: 'a' });
    expect(lineStanding([blind, again], [])).toMatchObject({ acceptedEnds: 3, releasableEnds: 2 });
    const refused = look('c', 1, { regaugesId: 'a', decision: 'refused' });
    expect(lineStanding([blind, again, refused], [])).toMatchObject({
      ...{ acceptedEnds: 2, releasableEnds: 2, refusedEnds: 0, held: [] },
    });
  });

  it('suspect ends are held, those scrapped or made again count no more', () => {
    expect(lineStanding([look('a', 5)], [suspect('a', 2, 1)])).toMatchObject({
      ...{ acceptedEnds: 4, releasableEnds: 2 },
      held: [{ ends: 2, why: 'suspect', recallIds: ['R'] }],
    });
  });

  it('a second look with a gauge that was found out since shows nothing', () => {
    const blind = look('a', 3, { gaugesMissing: ['go-ring'] });
    const again = look('b', 3, { regaugesId: 'a' });
    expect(lineStanding([blind, again], [suspect('b', 3)]).releasableEnds).toBe(0);
  });
});

// source: identity. Releasable ≤ accepted ≤ looked at; held ends are the difference, whatever happened.
it('never releases more than was accepted, and holds the rest with a reason', () => {
  const row = fc.record({
    endCount: fc.integer({ min: 1, max: 9 }),
    refused: fc.boolean(),
    blind: fc.boolean(),
    again: fc.nat(5),
    open: fc.nat(9),
    gone: fc.nat(9),
  });
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), (rows) => {
      const looks = rows.map((one, at) =>
        look(`l${at}`, one.endCount, {
          decision: one.refused ? 'refused' : 'accepted',
          gaugesMissing: one.blind ? ['go-ring'] : [],
          regaugesId: one.again < at && one.again % 2 === 1 ? `l${one.again}` : null,
        }),
      );
      const suspects = rows.map((one, at) => suspect(`l${at}`, one.open, one.gone));
      const { acceptedEnds, releasableEnds, held } = lineStanding(looks, suspects);
      const firsts = looks.filter((one) => one.regaugesId === null && one.decision === 'accepted');
      expect(releasableEnds).toBeGreaterThanOrEqual(0);
      expect(acceptedEnds).toBeLessThanOrEqual(firsts.reduce((sum, one) => sum + one.endCount, 0));
      expect(acceptedEnds - releasableEnds).toBe(held.reduce((sum, one) => sum + one.ends, 0));
    }),
  );
});
