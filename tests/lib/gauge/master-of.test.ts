import { expect, it } from 'vitest';
import { canCheckOn, masterRank } from '@/lib/gauge/master-of';
import type { Role } from '@/lib/shop/vocabulary';

const gauge = (id: string, role: Role, ...fitsConnectionIds: string[]) => ({ id, role, fitsConnectionIds });
const ring = gauge('G-56-GO-1', 'go-ring', '9-16-medium', '9-16-high');

// source: common practice, no source. A ring is proved on the plug of its own thread.
it.each([
  [gauge('SP-56-1', 'setting-plug', '9-16-high'), true],
  [gauge('SP-38-1', 'setting-plug', '3-8-high'), false],
  [gauge('MKR-1', 'micrometer', '9-16-high'), false],
  [ring, false],
])('a ring on %o: %s', (master, can) => {
  expect(canCheckOn(ring, master)).toBe(can);
});

it('a cone gauge goes on a master seat of any size, since cones share their angle', () => {
  expect(canCheckOn(gauge('CG-1', 'cone-gauge', 'a'), gauge('MST-1', 'master-seat'))).toBe(true);
  expect(canCheckOn(gauge('TQW-1', 'torque-wrench'), gauge('TQW-1', 'torque-wrench'))).toBe(false);
});

// source: common practice, no source. Blue on the master seat is the usual check of a cone gauge; a micrometer comes after it.
it('the usual master comes first', () => {
  expect(masterRank('cone-gauge', 'master-seat')).toBeLessThan(masterRank('cone-gauge', 'micrometer'));
  expect(masterRank('go-ring', 'brush')).toBe(-1);
});
