import { expect, it } from 'vitest';
import { shopBacktest, shopBacktestInput } from '@/lib/outlook/shop-backtest';
import { shopRecord } from '../../support/shop-record';
import { logBook } from '../../support/tool-log';

const guesses = [{ partId: 'die-3-8', connectionId: '3-8-medium', ends: 100, giveOrTake: 2 }];

/** Three dies worn out one after the other in rows of 20: after 80, 100 and 120 threads. */
function log() {
  const book = logBook();
  for (const [at, rows] of [4, 5, 6].entries()) {
    const id = `D-${at + 1}`;
    book.receive(id, 'die');
    for (let row = 0; row < rows; row++) book.cut(id, 20, row === rows - 1 ? { goodEnds: 19 } : {});
    book.end(id, 'worn');
  }
  return { logs: book.logs(), lineEnds: new Map<string, number>(), facts: shopRecord({ guesses }) };
}

// source: hand. 15 rows; each asks 20 and the last of each die fell one short: 12 came true. At a count of 100 the rule says
// no to the sixth row of the third die, which was right, and yes to every other: wrong on two of the three last rows.
it('asks every row of the log again, beside the fixed count', () => {
  const { rows, card, wrong } = shopBacktest(log());
  expect(rows).toBe(15);
  expect(card.ours?.baseRate).toBe(12 / 15);
  expect(wrong).toMatchObject({ cases: 15, fixedCount: 2 });
  expect(card.fixedCount?.brier).toBeCloseTo(2 / 15, 12);
});

// source: identity. The same log gives the same figures, to the digit.
it('says the same of the same log', () => {
  expect(shopBacktest(log())).toEqual(shopBacktest(log()));
});

// source: hand. The rule changes a part after as many ends as its first guess; a part without one has no rule.
it('takes the first guess for the fixed count, and the beliefs of the shop', () => {
  const input = shopBacktestInput(log());
  expect(input.changeAtEnds?.('die-3-8')).toBe(100);
  expect(input.changeAtEnds?.('blade-3-8-medium')).toBeUndefined();
  expect(input.guesses?.die).toHaveLength(1);
  expect(input.priors.die.referenceMaterialId).toBe('316-cw');
});
