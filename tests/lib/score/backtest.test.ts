import { describe, expect, it } from 'vitest';
import { backtest } from '@/lib/score/backtest';
import { simulateReach } from '@/tests/support/reach-shop';
import { REACH_PRIORS } from '@/tests/support/reach-study';

const SHOP = simulateReach({
  key: 'unit',
  law: 'weibull',
  truth: 'as-believed',
  jobs: 40,
  readingShare: 0.3,
});
const INPUT = {
  events: SHOP.events,
  priors: { die: REACH_PRIORS, blade: REACH_PRIORS },
  changeAtEnds: SHOP.changeAtEnds,
  drawCount: 256,
};
const made = backtest(INPUT);

describe('a replay of a log', () => {
  it('predicts at every row, and settles by what followed', () => {
    const rows = SHOP.events.filter(({ type }) => type === 'cut');
    expect(made).toHaveLength(rows.length);
    expect(made.every(({ prediction }) => prediction.settled !== null)).toBe(true);
    expect(made.every(({ prediction }) => prediction.fixedCount !== undefined)).toBe(true);
    expect(new Set(made.map(({ prediction }) => prediction.id)).size).toBe(made.length);
  });

  // source: identity. What was said at a row depends on nothing after it.
  it('knows nothing of what comes later', () => {
    const cutAt = SHOP.events.findIndex((event, i) => i > 60 && event.type === 'cut') + 1;
    const early = backtest({ ...INPUT, events: SHOP.events.slice(0, cutAt) });
    early.forEach(({ prediction }, i) => {
      expect(prediction.probability).toBe(made[i]?.prediction.probability);
      expect(prediction.band).toEqual(made[i]?.prediction.band);
    });
  });

  it('listens to readings unless told not to', () => {
    const deaf = backtest({ ...INPUT, useReadings: false });
    const differs = deaf.filter(
      ({ prediction }, i) => prediction.probability !== made[i]?.prediction.probability,
    );
    expect(differs.length).toBeGreaterThan(0);
    const unread = backtest({ ...INPUT, events: SHOP.events.filter(({ type }) => type !== 'read') });
    expect(deaf.map(({ prediction }) => prediction)).toEqual(unread.map(({ prediction }) => prediction));
  });

  // source: hand. That an edge outlasted what it had cut before it was entered was known when it was entered.
  it('scores nothing that was over before the log began', () => {
    const first = SHOP.events.find((event) => event.type === 'cut');
    const events = SHOP.events.map((event) => (event === first ? { ...event, opening: true } : event));
    const without = backtest({ ...INPUT, events });
    expect(without).toHaveLength(made.length - 1);
    expect(without.some(({ row }) => row === first)).toBe(false);
  });

  // source: hand. 60 ends of one material asked, 10 cut, then other work: nothing follows for the 60.
  it('does not settle ends of one material by ends of another', () => {
    const name = { toolId: 'X', edgeNo: 1 };
    const about = { connectionId: 'c0', dry: false, rework: false, exposurePerEnd: 10.5 };
    const row = (materialId: string, ends: number, askedEnds = ends) =>
      ({ type: 'cut', atMs: 1, ...name, ...about, materialId, ends, goodEnds: ends, askedEnds }) as const;
    const began = {
      ...name,
      kind: 'die',
      partId: 'die-0',
      odIn: 0.375,
      regrinds: 0,
      startKnown: true,
    } as const;
    const events = [{ type: 'began', ...began } as const, row('ref', 10, 60), row('2507', 55)];
    const [asked, other] = backtest({ ...INPUT, events }).map(({ prediction }) => prediction.settled);
    expect(asked).toMatchObject({ outcome: null, reason: 'other-work' });
    expect(other).toMatchObject({ outcome: true });
  });

  it('says nothing of an edge that was used before by nobody knows how much', () => {
    const events = SHOP.events.map((event) =>
      event.type === 'began' ? { ...event, startKnown: false } : event,
    );
    expect(backtest({ ...INPUT, events })).toEqual([]);
  });
});
