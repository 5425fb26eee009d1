import { expect, it } from 'vitest';
import { judgeFit } from '@/lib/kit/judge-fit';
import type { Part } from '@/lib/shop/part';
import { HANDED_ROLES, ROLES, UNSIZED_ROLES } from '@/lib/shop/vocabulary';
import { DIE, HIGH, MEDIUM, part, QUARTER } from '../../support/db';

const NEED = { connection: HIGH, connections: [MEDIUM, HIGH, QUARTER] };
const stop = (of: Part, hand = of.hand) => judgeFit({ id: 'T-1', role: of.role, hand }, of, NEED);

// source: hand. The high-pressure end is left hand; the other pressure class of the same tube is no other size.
it('tells the other hand, the other pressure class and another size apart', () => {
  expect(stop(DIE)).toBeNull();
  expect(stop(DIE, 'RH')).toEqual(['hand', 'T-1 is right hand; 9⁄16 high pressure is left hand.']);
  expect(stop(DIE, null)?.[0]).toBe('hand');
  expect(stop(part({ id: 'b', role: 'blade', fitsConnectionIds: [MEDIUM.id] }))?.[0]).toBe('pressure');
  expect(stop(part({ id: 'b', role: 'blade', fitsConnectionIds: [QUARTER.id] }))).toEqual([
    'size',
    'T-1 does not serve 9⁄16 high pressure.',
  ]);
});

// source: hand. A part of which nobody has written down a size fits none, unless its kind is bound to none.
it('a tool of no written size goes only where its kind has none', () => {
  for (const role of ROLES) {
    const hand = HANDED_ROLES.includes(role) ? HIGH.hand : null;
    const found = stop(part({ id: 'x', role, hand, fitsConnectionIds: [] }));
    expect(found === null, role).toBe(UNSIZED_ROLES.includes(role));
  }
});
