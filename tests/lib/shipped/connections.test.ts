import { expect, it } from 'vitest';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { ConnectionSchema } from '@/lib/shop/noun';
import { threadDesignation } from '@/lib/thread/designation';
import { exposureOfEnd } from '@/lib/wear/connection-exposure';

const byId = new Map(SHIPPED_CONNECTIONS.map((connection) => [connection.id, connection]));

function connectionOf(id: string) {
  const connection = byId.get(id);
  if (connection === undefined) throw new Error(`no shipped connection ${id}`);
  return connection;
}

// source: hand. Thread lengths in 1/32 in × 25.4 ÷ 32 and length × TPI, worked on paper; lengths common practice, no source.
it.each([
  ['1-4-medium', 8.73125, 9.625],
  ['1-4-high', 14.2875, 15.75],
  ['3-8-medium', 11.1125, 10.5],
  ['3-8-high', 19.05, 18],
  ['9-16-medium', 12.7, 9],
  ['9-16-high', 23.8125, 16.875],
  ['3-4-medium', 15.875, 10],
  ['1-medium', 19.84375, 10.9375],
])('%s is threaded over %s mm in %s turns', (id, lengthMm, turns) => {
  const connection = connectionOf(id);
  expect(connection.threadLengthMm).toBeCloseTo(lengthMm, 10);
  expect(exposureOfEnd({ operation: 'thread', connection })).toBeCloseTo(turns, 10);
});

// source: published. ASME B1.1 designations of the five threads: fine series but for 1-14, a special pitch.
it('names the five threads left hand, and 1 in as 1-14 UNS', () => {
  const names = SHIPPED_CONNECTIONS.map(
    ({ odNum, odDen, tpi, hand }) =>
      threadDesignation({ sizeIn: { num: odNum, den: odDen }, tpi, hand }).text,
  );
  expect([...new Set(names)]).toEqual([
    '1/4-28 UNF-LH',
    '3/8-24 UNF-LH',
    '9/16-18 UNF-LH',
    '3/4-16 UNF-LH',
    '1-14 UNS-LH',
  ]);
});

// source: formula. Cone volumes to the mm³ by V = π/4·D²·h − π·h/12·(D² + D·d + d²), h = (D − d)/(2·tan 29.5°), by calculator.
it.each([
  ['1-4-medium', 29],
  ['3-8-medium', 59],
  ['9-16-medium', 142],
  ['9-16-high', 422],
  ['1-medium', 814],
])('a %s cone costs a blade %s mm³', (id, mm3) => {
  const cut = exposureOfEnd({ operation: 'cone', connection: connectionOf(id) });
  expect(Math.round(cut)).toBe(mm3);
});

// source: identity. Examples: all to be confirmed, no NOT GO rule assumed, and 1 in high pressure not among them.
it('ships examples that nobody has confirmed', () => {
  for (const connection of SHIPPED_CONNECTIONS) {
    expect(ConnectionSchema.parse(connection)).toEqual(connection);
    expect(connection).toMatchObject({
      confirmed: false,
      notGoTurnsMax: null,
      hand: 'LH',
      threadClass: '2A',
    });
  }
  expect(byId.size).toBe(8);
  expect(byId.has('1-high')).toBe(false);
});
