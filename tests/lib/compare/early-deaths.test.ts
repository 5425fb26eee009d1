import { describe, expect, it } from 'vitest';
import { earlyDeaths, type LotTool } from '@/lib/compare/early-deaths';

const good = (i: number): LotTool => ({ toolId: `B${i}`, firstUsedAtMs: i, cause: null, usedShare: 0.4 });
const chipped = (i: number): LotTool => ({ ...good(i), cause: 'chipped-early', usedShare: 0.06 });

describe('early deaths in a lot', () => {
  // source: hand. The rule of the trade: two among the first five, not one.
  it('Q6: a blade chipped after three cones is one chip, and says little of its lot', () => {
    expect(earlyDeaths('L1', [chipped(1), good(2), good(3)])).toEqual({
      ...{ lot: 'L1', looked: 3, early: 1, toolIds: ['B1'], proposeHold: false },
    });
  });

  it('two among the first five propose to hold it', () => {
    const lot = [good(1), chipped(2), good(3), good(4), chipped(5), good(6)];
    expect(earlyDeaths('L1', lot)).toMatchObject({
      looked: 5,
      early: 2,
      toolIds: ['B2', 'B5'],
      proposeHold: true,
    });
    expect(earlyDeaths('L1', [...lot].reverse())).toEqual(earlyDeaths('L1', lot));
  });

  it('a second one after the first five does not', () => {
    const lot = [good(1), chipped(2), good(3), good(4), good(5), chipped(6)];
    expect(earlyDeaths('L1', lot).proposeHold).toBe(false);
  });

  it('dropped, and chipped late, are not the lot’s doing', () => {
    const dropped: LotTool = { ...good(1), cause: 'dropped', usedShare: 0.01 };
    const late: LotTool = { ...chipped(2), usedShare: 0.6 };
    expect(earlyDeaths('L1', [dropped, late, chipped(3)])).toMatchObject({ early: 1, proposeHold: false });
  });

  it('one found faulty from the maker is enough', () => {
    expect(earlyDeaths('L1', [{ ...good(9), cause: 'bad-lot' }, good(1)]).proposeHold).toBe(true);
  });
});
