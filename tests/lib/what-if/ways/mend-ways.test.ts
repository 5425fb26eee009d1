import { describe, expect, it } from 'vitest';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { mendWay, regrindWay } from '@/lib/what-if/ways/mend-ways';
import { pricedWays } from '@/lib/what-if/ways/priced-ways';
import { changed, FAR, question } from '../../../support/way-question';

describe('mending with what the shop has', () => {
  // source: hand. A ring that lapses in mid-line is calibrated, for what the shop says that costs, if it does.
  it('calibrates a gauge that lapses, and gauges a first-off for nothing', () => {
    const lapsing = question({ tools: changed('GO-RING-1', { dueOnDay: '2026-03-10' }) }, { ends: 4 });
    expect(mendWay(lapsing)).toMatchObject({
      verdict: 'can-make',
      costMinor: null,
      actions: [{ kind: 'calibrate', toolId: 'GO-RING-1' }],
    });
    const costs = { ...DEFAULT_COSTS, calibrationMinor: 8_500 };
    const priced = question({ costs, tools: changed('GO-RING-1', { dueOnDay: '2026-03-10' }) }, { ends: 4 });
    expect(mendWay(priced)).toMatchObject({ costMinor: 8_500 });
    const owed = question({ tools: changed('BLADE-1', { firstOffOwed: true }) }, { ends: 4 });
    expect(mendWay(owed)).toMatchObject({ verdict: 'can-make', costMinor: 0 });
    expect(pricedWays(owed)[0]?.actions).toEqual([{ kind: 'free', toolId: 'BLADE-1' }]);
  });

  // source: hand. A blade quarantined is what is in the way; reground it is back in 14 + 1 days, for 2,000.
  it('regrinds a blade, later where it is not back in time', () => {
    const asked = question({ tools: changed('BLADE-1', { state: 'quarantined' }) }, { ends: 2, ...FAR });
    expect(regrindWay(asked)).toMatchObject({
      verdict: 'can-make',
      costMinor: 2_000,
      actions: [{ kind: 'regrind', toolId: 'BLADE-1', backOnDay: '2026-03-17' }],
    });
    const soon = regrindWay(question({ tools: changed('BLADE-1', { state: 'quarantined' }) }, { ends: 2 }));
    expect(soon?.changes.at(-1)).toMatchObject({ kind: 'change-dates', startOnDay: '2026-03-17' });
  });
});
