import { expect, it } from 'vitest';
import { askedDrawer } from '@/app/crib/count/_parts/asked-drawer';

// source: hand. An address names a size of the table and a kind; anything else narrows nothing.
it('reads the drawer from the address, and nothing that the shop has no row for', () => {
  const rows = [{ id: '9-16-high' }];
  expect(askedDrawer({ size: '9-16-high', kind: 'die' }, rows)).toEqual({
    connectionId: '9-16-high',
    edgeKind: 'die',
  });
  expect(askedDrawer({ size: '', kind: 'blade' }, rows)).toEqual({ edgeKind: 'blade' });
  expect(askedDrawer({ size: '1-high', kind: 'brush' }, rows)).toEqual({});
  expect(askedDrawer({ size: ['9-16-high'], kind: undefined }, rows)).toEqual({});
});
