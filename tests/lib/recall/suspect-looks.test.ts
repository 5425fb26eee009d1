import { expect, it } from 'vitest';
import { type GaugeLook, listSuspects } from '@/lib/recall/suspect-looks';

const window = {
  evidenceOnDay: '2026-03-01',
  windowFromMs: Date.UTC(2026, 2, 1, 12),
  windowToMs: Date.UTC(2026, 2, 9),
};
const look = (acceptanceId: string, dayInMarch: number, over: Partial<GaugeLook> = {}): GaugeLook => ({
  ...{ acceptanceId, endCount: 3, decision: 'accepted', verdict: 'pass' },
  ...{ gaugedAtMs: Date.UTC(2026, 2, dayInMarch, 8), gaugedOnDay: `2026-03-0${dayInMarch}` },
  ...over,
});

// source: hand. Which of the looks a person would write on the list.
it('lists what was accepted by the gauge in the window, and what it refused there', () => {
  const looks = [
    look('before', 1),
    look('inside', 4),
    look('refused', 5, { decision: 'refused', verdict: 'fail' }),
    look('refused by another gauge', 5, { decision: 'refused' }),
    look('lay by', 5, { verdict: 'not-used' }),
    look('after', 9),
  ];
  expect(listSuspects(looks, window)).toEqual({
    suspects: [{ acceptanceId: 'inside', endCount: 3 }],
    refusedIds: ['refused'],
  });
});
