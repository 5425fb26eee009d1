import { describe, expect, it } from 'vitest';
import { compareGroups, lotsToHold } from '@/lib/outlook/compare-groups';
import { edgeGroups } from '@/lib/outlook/edge-groups';
import { shopEnsemble } from '@/lib/outlook/shop-ensemble';
import type { ToolState } from '@/lib/shop/vocabulary';
import { edgeFacts, use } from '../../support/edge-facts';
import { setParts, shopRecord, toolFacts } from '../../support/shop-record';
import { logBook } from '../../support/tool-log';

const SUPPLIER = 'Maker A';
const parts = setParts().map((part) => ({ ...part, supplier: SUPPLIER }));

interface Die {
  readonly lot: string;
  readonly ends: number;
  readonly heat?: string;
  readonly cause?: 'worn' | 'chipped-early' | 'dropped' | 'bad-lot';
}

/** Dies of several lots, each with one row and, where it ended, its cause: as the log and as the record have them. */
function shopOf(dies: readonly Die[], state: ToolState = 'in-crib') {
  const book = logBook();
  const edges = dies.map(({ lot, ends, heat = '', cause }, at) => {
    const id = `D-${10 + at}`;
    book.receive(id, 'die', { lot });
    if (ends > 0) book.cut(id, ends, { heat });
    if (cause !== undefined) book.end(id, cause);
    const end = cause === undefined ? null : cause === 'worn' ? ('worn' as const) : ('incident' as const);
    return edgeFacts(id, { end, lastUse: use(1), use: ends > 0 ? [use(ends)] : [] });
  });
  const tools = dies.map((_, at) => toolFacts({ id: `D-${10 + at}`, role: 'die', state }));
  const guesses = [{ partId: 'die-3-8', connectionId: '3-8-medium', ends: 100, giveOrTake: 1.5 }];
  const facts = shopRecord({ parts, tools, edges, guesses });
  return { shop: { facts, ensemble: shopEnsemble(facts) }, logs: book.logs() };
}

const compared = (dies: readonly Die[]) => {
  const { shop, logs } = shopOf(dies);
  return compareGroups(shop, logs);
};
const lotOf = (lot: string, lives: readonly number[], heat?: string): Die[] =>
  lives.map((ends) => ({ lot, ends, cause: 'worn', ...(heat === undefined ? {} : { heat }) }));

describe('comparing groups', () => {
  const good = lotOf('GOOD', [92, 96, 99, 101, 104, 108, 111, 115]);

  // source: hand. Six dies of a lot that wear out at half the life of eight others stand out by any measure.
  it('flags a lot that dies at half the age, with its evidence', () => {
    const { judged } = compared([...good, ...lotOf('POOR', [44, 48, 50, 52, 55, 58])]);
    const [first] = judged;
    expect(first).toMatchObject({ kind: 'die', flag: { groupedBy: 'lot', verdict: 'flagged' } });
    expect(first?.flag.effect).toMatchObject({ groupId: 'POOR', edges: 6, worn: 6, ends: 307 });
    expect(first?.flag.effect.probabilityLower).toBeGreaterThan(0.99);
    expect(first?.flag.logRank?.p).toBeLessThan(0.01);
  });

  // source: hand. Two dies are below the stated three; one supplier of everything has nothing to stand beside.
  it('judges none with too little in the log, and none that has nothing beside it', () => {
    const { judged, tooLittle } = compared([...good, ...lotOf('FEW', [44, 48])]);
    expect(judged.map(({ flag }) => flag.effect.groupId)).toEqual(['GOOD']);
    expect(tooLittle).toBe(2);
  });

  // source: hand. Two lots that last alike: neither stands out.
  it('flags nothing where lots last alike', () => {
    const { judged } = compared([...good, ...lotOf('ALIKE', [90, 97, 100, 103, 106, 113])]);
    expect(judged.map(({ flag }) => flag.verdict)).toEqual(['no-difference', 'no-difference']);
  });

  // source: hand. The same by heat: an edge belongs to a heat with what it cut of it, so no log-rank test is asked.
  it('Q21: asks the same of heats: a new heat on which dies die twice as fast stands out', () => {
    const dies = [
      ...lotOf('', [92, 96, 99, 101, 104, 108, 111, 115], 'H1'),
      ...lotOf('', [44, 48, 50, 52, 55, 58], 'H2'),
    ];
    const hard = compared(dies).judged[0]?.flag;
    expect(hard).toMatchObject({ groupedBy: 'heat', verdict: 'flagged', effect: { groupId: 'H2' } });
    expect(hard?.logRank).toBeUndefined();
  });
});

// source: hand. The rule as stated: two of the first five chipped early, or one faulty from the maker; dropped is the bench's.
describe('lots to hold', () => {
  const holds = (dies: readonly Die[], state: ToolState = 'in-crib') => {
    const { shop, logs } = shopOf(dies, state);
    return lotsToHold(shop, logs, edgeGroups(logs, parts));
  };
  const chipped = (lot: string): Die => ({ lot, ends: 3, cause: 'chipped-early' });
  const fine = (lot: string): Die => ({ lot, ends: 40 });

  it('Q6: are those of which two of the first five chipped early, with what is left of the lot', () => {
    expect(holds([chipped('L1'), fine('L1'), fine('L1'), chipped('L1')])).toMatchObject([
      {
        lot: 'L1',
        looked: 4,
        early: 2,
        toolIds: ['D-10', 'D-13'],
        leftIds: ['D-10', 'D-11', 'D-12', 'D-13'],
      },
    ]);
  });

  it('Q6: are not those with one early chip, two dropped, or a chip beyond the first five', () => {
    expect(holds([chipped('L1'), ...Array.from({ length: 4 }, () => fine('L1')), chipped('L1')])).toEqual([]);
    const dropped: Die = { lot: 'L1', ends: 3, cause: 'dropped' };
    expect(holds([dropped, dropped])).toEqual([]);
  });

  it('are not those of which no tool was used, and not tools without a lot', () => {
    expect(holds([{ lot: 'L1', ends: 0 }, chipped(''), chipped('')])).toEqual([]);
  });

  it('are not those of which nothing can go out any more', () => {
    expect(holds([chipped('L1'), chipped('L1')], 'scrapped')).toEqual([]);
    expect(holds([chipped('L1'), chipped('L1')], 'quarantined')).toEqual([]);
  });

  it('are those with one faulty from the maker', () => {
    expect(holds([{ lot: 'L2', ends: 2, cause: 'bad-lot' }])).toMatchObject([{ lot: 'L2', early: 1 }]);
  });
});
