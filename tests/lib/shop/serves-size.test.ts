import { expect, it } from 'vitest';
import { setNeeds } from '@/lib/capability/complete-set';
import { servesEverySize, servesSize } from '@/lib/shop/serves-size';
import { HANDED_ROLES, OPERATIONS, ROLES, UNSIZED_ROLES } from '@/lib/shop/vocabulary';

// source: hand. Stated: what the list names; without a list only what is bound to no size.
it('serves what its list names, and without a list only where its kind knows no size', () => {
  for (const role of ROLES) {
    const named = { role, fitsConnectionIds: ['9-16-high'] };
    expect(servesSize(named, '9-16-high')).toBe(true);
    expect(servesSize(named, '1-4-medium')).toBe(false);
    const unnamed = { role, fitsConnectionIds: [] };
    expect(servesSize(unnamed, '9-16-high'), role).toBe(UNSIZED_ROLES.includes(role));
    expect(servesEverySize(unnamed)).toBe(servesSize(unnamed, 'a size that nobody has yet'));
  }
});

// source: identity. What is bound to a hand is bound to a thread, and so to a size; the plan's hand-bound needs carry one.
it('nothing handed is without a size, and every need bound to a hand is of a handed kind', () => {
  for (const role of HANDED_ROLES) expect(UNSIZED_ROLES).not.toContain(role);
  for (const { role, handBound } of setNeeds(OPERATIONS)) if (handBound) expect(HANDED_ROLES).toContain(role);
});
