import { expect, it } from 'vitest';
import { setNeeds } from '@/lib/capability/complete-set';
import { completeSetParts } from '@/lib/shipped/complete-set-parts';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { SHIPPED_MATERIALS } from '@/lib/shipped/materials';
import { PartSchema } from '@/lib/shop/part';
import type { Role } from '@/lib/shop/vocabulary';

/** Bound to no size: such a part names none. */
const UNBOUND: readonly Role[] = ['deburr-tool', 'brush', 'fluid'];

const every = SHIPPED_CONNECTIONS.flatMap((connection) => completeSetParts(connection));
const byId = new Map(every.map((part) => [part.id, part]));

// source: identity. What the plan asks for is what a complete set offers.
it('meets every need of coning, threading and assembling', () => {
  const wanted = setNeeds(['cone', 'thread', 'assemble']).map(({ role }) => role);
  for (const connection of SHIPPED_CONNECTIONS) {
    const parts = completeSetParts(connection);
    const here = parts
      .filter((part) => part.fitsConnectionIds.includes(connection.id) || UNBOUND.includes(part.role))
      .map(({ role }) => role);
    expect(here).toEqual(expect.arrayContaining(wanted));
    for (const part of parts) expect(PartSchema.parse(part)).toEqual(part);
  }
});

// source: identity. A key never stands for two different parts, whichever connection it was made from.
it('puts sets together without contradiction', () => {
  for (const part of every) expect(part).toEqual(byId.get(part.id));
});

// source: common practice, no source. Which items a size shares between services, and sizes with each other.
it.each([
  ['die-9-16', ['9-16-medium', '9-16-high']],
  ['go-ring-3-8', ['3-8-medium', '3-8-high']],
  ['coning-guide-1-4', ['1-4-medium', '1-4-high']],
  ['collet-1', ['1-medium']],
  ['blade-9-16-high', ['9-16-high']],
  ['cone-gauge-1-4-medium', ['1-4-medium']],
  ['length-gauge-3-8-high', ['3-8-high']],
  ['coning-body-large', ['3-4-medium', '1-medium']],
  ['coning-body-small', ['1-4-medium', '1-4-high', '3-8-medium', '3-8-high', '9-16-medium', '9-16-high']],
  ['brush', []],
  ['die-stock', SHIPPED_CONNECTIONS.map(({ id }) => id)],
])('%s serves %j', (id, connectionIds) => {
  expect(byId.get(id)?.fitsConnectionIds).toEqual(connectionIds);
});

// source: published. ASME B1.1: left hand is always stated; 14 threads at 1 in is UNS, the 12 of the fine series is the wrong die.
it.each([
  ['die-9-16', '9/16-18 UNF-LH die, adjustable split'],
  ['die-1', '1-14 UNS-LH die, adjustable split'],
  ['go-ring-1', '1-14 UNS-LH GO ring, class 2A'],
])('an order for %s spells out %s', (id, designation) => {
  expect(byId.get(id)).toMatchObject({ designation, hand: 'LH' });
});

// source: identity.
it('names only connections and materials that the shop has', () => {
  const connections = SHIPPED_CONNECTIONS.filter(({ id }) => id.startsWith('9-16'));
  const materials = SHIPPED_MATERIALS.filter(({ id }) => id === '316-cw' || id === 'ti-2');
  const parts = connections.flatMap((connection) => completeSetParts(connection, { connections, materials }));
  expect(parts.find(({ id }) => id === 'die-stock')?.fitsConnectionIds).toEqual(['9-16-medium', '9-16-high']);
  expect(parts.find(({ role }) => role === 'fluid')?.permittedMaterialIds).toEqual(['316-cw']);
});

// source: common practice, no source. A usual threading oil stays off titanium until its own sheet permits it.
it('keeps the usual fluid off titanium', () => {
  expect(byId.get('fluid')?.permittedMaterialIds).not.toContain('ti-2');
  expect(byId.get('fluid')?.chlorinated).toBe('unknown');
});
