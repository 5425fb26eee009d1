import { expect, it } from 'vitest';
import { judgeCustody } from '@/lib/kit/judge-custody';
import { STOP_HEADLINE } from '@/lib/kit/kit-stop';
import { TOOL_STATES } from '@/lib/shop/vocabulary';
import { toolAfter } from '../../support/entry';

// source: hand. Only what lies in the crib leaves it.
it('only a tool in the crib may leave it, and every stop has a headline', () => {
  const base = {
    ...toolAfter('die'),
    holderName: 'Ash Moor',
    edgeEnded: false,
    endsUsedUp: false,
    lotChlorinated: null,
  };
  for (const state of TOOL_STATES) {
    const stop = judgeCustody({ ...base, state }, 'J-7.1', '2026-03-02');
    expect(stop === null).toBe(state === 'in-crib');
    if (stop !== null) expect(STOP_HEADLINE[stop[0]]).toMatch(/^[A-Z ]+$/);
  }
});
