import { describe, expect, it } from 'vitest';
import { pricedWay } from '@/lib/what-if/ways/ask-way';
import { question } from '../../../support/way-question';

describe('a way that is tried', () => {
  // source: identity. A change that cannot be is no way.
  it('offers nothing that cannot be tried', () => {
    const asked = question({});
    const changes = [{ kind: 'lose-tool', toolId: 'NO-SUCH' } as const];
    expect(pricedWay(asked, { actions: [], changes, costMinor: 0 })).toBeUndefined();
  });
});
