import { expect, it } from 'vitest';
import { LogCutInput } from '@/lib/shop/command-input';
import { decideCut, typedLength } from '@/lib/wear/decide-cut';
import { BLADE, DIE, entered, HIGH, MATERIALS, must, NOW_MS, sentence } from '../../support/db';
import { toolAfter } from '../../support/entry';

const die = { ...toolAfter('die'), hand: 'LH' as const };
const facts = (fields: object = {}, over: object = {}) => {
  const row = {
    ...entered(),
    toolId: 'T-1',
    connectionId: HIGH.id,
    materialId: '316',
    ends: 4,
    goodEnds: 4,
    ...fields,
  };
  const input = LogCutInput.parse(row);
  return { input, cutAtMs: NOW_MS, tool: die, part: DIE, connection: HIGH, material: MATERIALS[0], ...over };
};

// source: hand. 4 ends × 10.5 turns.
it('a die threads: the row costs its turns', () => {
  expect(must(decideCut(facts()))).toMatchObject({
    ...{ operation: 'thread', exposureMicro: 42_000_000, threadLengthMm: null, threadLengthTyped: '' },
    ...{ cutAtMs: NOW_MS, correctsId: null },
  });
});

it('a blade cones: a thread length left in the field means nothing', () => {
  const cone = facts(
    { threadLength: { typed: '99', unit: 'in' } },
    { tool: toolAfter('blade'), part: BLADE },
  );
  expect(must(decideCut(cone))).toMatchObject({
    operation: 'cone',
    threadLengthMm: null,
    threadLengthTyped: '',
  });
});

// source: hand. 1/2 in is 12.7 mm; 4 × 9 turns = 36.
it('keeps the length as typed beside the length in mm', () => {
  const row = must(decideCut(facts({ threadLength: { typed: '1/2', unit: 'in' } })));
  expect(row).toMatchObject({ threadLengthMm: 12.7, threadLengthTyped: '1/2 in', exposureMicro: 36_000_000 });
});

it.each([
  [null, ''],
  [{ typed: '', unit: 'mm' }, ''],
  [{ typed: '12', unit: 'mm' }, '12 mm'],
  [{ typed: '12 mm', unit: 'mm' }, '12 mm'],
  [{ typed: '0.5"', unit: 'in' }, '0.5"'],
] as const)('a length typed as %o is kept as %j', (length, text) => {
  expect(typedLength(length)).toBe(text);
});

it('refuses a wrong hand, a wrong size, a doubtful length, and what the shop does not know', () => {
  expect([
    sentence(decideCut(facts({}, { tool: { ...die, hand: 'RH' } }))),
    sentence(decideCut(facts({}, { part: { ...DIE, fitsConnectionIds: [] } }))),
    sentence(decideCut(facts({ threadLength: { typed: '0.6', unit: 'mm' } }))),
    sentence(decideCut(facts({ threadLength: { typed: 'long', unit: 'mm' } }))).length > 10,
    sentence(decideCut(facts({}, { connection: undefined }))),
    sentence(decideCut(facts({}, { material: undefined }))),
    sentence(decideCut(facts({}, { tool: undefined }))),
  ]).toEqual([
    'T-1 is RH; 9⁄16 high pressure needs LH.',
    'T-1 does not serve 9⁄16 high pressure.',
    '0.6 mm is 0.024 in: did you mean 0.6 in?',
    true,
    'The shop has no table row for this size and service. Add it from the fitting maker’s manual first.',
    'The shop does not know this material. Add it first.',
    'No tool T-1 is in the record.',
  ]);
});

it('a tool in the record without its part is a bug', () => {
  expect(() => decideCut(facts({}, { part: undefined }))).toThrow('invariant broken');
});

// source: hand. Stated: a bottle of the shop, by whatever way it was typed; none where it was cut dry.
it('a row names the bottle it was cut with, or none', () => {
  const bottle = { id: 'F-L05', role: 'fluid' as const };
  const named = (fluid: object | undefined, fields: object = {}) =>
    decideCut(facts({ fluidId: 'f-l05', ...fields }, { fluid }));
  expect(must(named(bottle)).fluidId).toBe('F-L05');
  expect('fluidId' in must(decideCut(facts()))).toBe(false);
  expect(sentence(named(undefined))).toBe('No bottle f-l05 is in the record. Receive it first.');
  expect(sentence(named({ id: 'D-56-02', role: 'die' }))).toMatch(/^D-56-02 is not a fluid/);
  expect(sentence(named(bottle, { dry: true }))).toMatch(/^Cut dry means without fluid/);
});
