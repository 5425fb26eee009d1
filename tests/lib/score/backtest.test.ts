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

  it('says nothing of an edge that was used before by nobody knows how much', () => {
    const events = SHOP.events.map((event) =>
      event.type === 'began' ? { ...event, startKnown: false } : event,
    );
    expect(backtest({ ...INPUT, events })).toEqual([]);
  });
});
