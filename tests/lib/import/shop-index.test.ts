import { describe, expect, it } from 'vitest';
import { findConnection, findMaterial, makeShopIndex, sizeServiceText } from '@/lib/import/shop-index';
import { HIGH, MATERIALS, MEDIUM, PEOPLE, part } from '@/tests/support/db';

const soft = {
  id: '316-soft',
  name: '316',
  condition: 'annealed',
  factor: 0.9,
  factorGiveOrTake: 1.2,
  isReference: false,
};
const duplex = {
  id: 'm7',
  name: 'Duplex',
  condition: 'a',
  factor: 2,
  factorGiveOrTake: 1.2,
  isReference: false,
};
const index = makeShopIndex({
  connections: [MEDIUM, HIGH],
  materials: [...MATERIALS, soft, duplex, { ...duplex, id: 'm8', condition: 'b' }],
  people: PEOPLE,
  parts: [part({ id: 'p', role: 'die' })],
});

describe('findConnection', () => {
  it('finds the row of a size and service, and guesses none', () => {
    expect(findConnection(index, { num: 9, den: 16 }, 'high')).toEqual({ ok: true, value: HIGH });
    const missing = findConnection(index, { num: 1, den: 1 }, 'high');
    expect(!missing.ok && missing.refusal.sentence).toBe(
      'The shop has no table row for 1 high pressure. Add the size under Set-up first.',
    );
  });
});

describe('findMaterial', () => {
  const id = (text: string) => {
    const found = findMaterial(index, text);
    return found.ok ? found.value.id : found.refusal.code;
  };

  it('finds by key, by name, and by name with condition', () => {
    expect([id('2507'), id('316 Annealed'), id('316-SOFT'), id('316, cold worked')]).toEqual([
      '2507',
      '316-soft',
      '316-soft',
      '316',
    ]);
  });

  it('takes a key over another’s name, and asks where a name is two materials', () => {
    expect([id('316'), id('duplex'), id('duplex b'), id('inox')]).toEqual([
      '316',
      'materials',
      'm8',
      'unknown-material',
    ]);
  });
});

it('makeShopIndex knows people by key and name', () => {
  expect([index.peopleNamed.get('ashmoor')?.id, index.peopleNamed.get('robin')?.id]).toEqual([
    'ash',
    'robin',
  ]);
});

it('sizeServiceText names what is given', () => {
  expect(sizeServiceText({ num: 9, den: 16 }, 'high')).toBe('9/16 in high pressure');
  expect(sizeServiceText({ num: 1, den: 1 }, null)).toBe('1 in');
  expect(sizeServiceText(null, null)).toBe('');
});
