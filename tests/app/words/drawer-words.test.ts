import { expect, it } from 'vitest';
import { drawerWords } from '@/app/_shared/words/drawer-words';

const names = { connection: (id: string) => (id === '9-16-high' ? '9⁄16 high pressure' : id) };

// source: hand. The size and the kind as the shop says them, and nothing where nothing was narrowed.
it('names the drawer that was counted', () => {
  expect(drawerWords({}, names)).toBe('');
  expect(drawerWords({ edgeKind: 'blade' }, names)).toBe('blades');
  expect(drawerWords({ connectionId: '9-16-high' }, names)).toBe('9⁄16 high pressure blades and dies');
  expect(drawerWords({ connectionId: '9-16-high', edgeKind: 'die' }, names)).toBe('9⁄16 high pressure dies');
});
