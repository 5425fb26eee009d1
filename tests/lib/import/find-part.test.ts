import { describe, expect, it } from 'vitest';
import { findPart } from '@/lib/import/find-part';
import type { ToolRow } from '@/lib/import/read-tool-row';
import { makeShopIndex } from '@/lib/import/shop-index';
import { BLADE, BODY, DIE, FLUID, HIGH, MATERIALS, MEDIUM, part, QUARTER } from '@/tests/support/db';
import { toolRow } from '@/tests/support/import-rows';

const highGuide = part({ id: 'guide-high', role: 'coning-guide', fitsConnectionIds: [HIGH.id] });
const bothGuide = part({ id: 'guide-both', role: 'coning-guide' });
const rightDie = part({ id: 'die-56-rh', role: 'die', hand: 'RH' });
const index = makeShopIndex({
  connections: [MEDIUM, HIGH, QUARTER],
  materials: MATERIALS,
  people: [],
  parts: [
    DIE,
    BLADE,
    BODY,
    FLUID,
    highGuide,
    bothGuide,
    rightDie,
    part({ id: 'brush-a', role: 'brush' }),
    part({ id: 'brush-b', role: 'brush' }),
  ],
});
const size = { num: 9, den: 16 };

function found(change: Partial<ToolRow>): string {
  const result = findPart(index, toolRow(change));
  return result.ok ? result.value.id : result.refusal.sentence;
}

describe('findPart', () => {
  it('finds the one part of a kind, size, service and hand', () => {
    expect(found({ role: 'die', size, service: 'high', hand: 'LH' })).toBe('die-56');
    expect(found({ role: 'die', size, hand: 'RH' })).toBe('die-56-rh');
    expect(found({ role: 'blade', size })).toBe('blade-56');
    expect(found({ role: 'fluid' })).toBe('oil');
  });

  it('takes an empty service to mean a part that serves all', () => {
    expect(found({ role: 'coning-guide', size })).toBe('guide-both');
  });

  it('asks for the key where several parts can be meant', () => {
    expect(found({ role: 'coning-guide', size, service: 'high' })).toContain('guide-high, guide-both');
    expect(found({ role: 'brush' })).toContain('brush-a, brush-b');
  });

  it('says what to do where there is none, and invents none', () => {
    expect(found({ role: 'die', size: { num: 1, den: 1 }, service: 'high' })).toBe(
      'No part for a 1 in high pressure threading die. Add the size under Set-up first.',
    );
    expect(found({ role: 'micrometer' })).toBe('No part for a micrometer. Add it under Set-up first.');
  });

  it('says that the hand is wrong where nothing else is', () => {
    const quarterDie = part({
      id: 'die-25',
      hand: 'LH',
      name: 'Small die',
      role: 'die',
      fitsConnectionIds: [QUARTER.id],
    });
    const small = makeShopIndex({
      connections: [QUARTER],
      materials: MATERIALS,
      people: [],
      parts: [quarterDie, BODY],
    });
    const sentence = (change: Partial<ToolRow>) => {
      const result = findPart(small, toolRow(change));
      return result.ok ? '' : `${result.refusal.field}: ${result.refusal.sentence}`;
    };
    expect(sentence({ role: 'die', size: { num: 1, den: 4 }, hand: 'RH' })).toBe(
      'hand: Small die must be LH, this row says RH. If the tool is marked RH, send it back.',
    );
    expect(sentence({ role: 'coning-body', hand: 'LH' })).toBe(
      'hand: A coning body has no hand. Leave the cell empty.',
    );
  });

  it('checks a part named by its key against the rest of the row', () => {
    expect(found({ partId: 'die-56' })).toBe('die-56');
    expect(found({ partId: 'nothing' })).toContain('knows no part “nothing”');
    expect(found({ partId: 'die-56', role: 'blade' })).toContain(
      'is a threading die, this row says coning blade',
    );
    expect(found({ partId: 'die-56', size: { num: 1, den: 4 } })).toBe('die-56 does not serve 1/4 in.');
  });
});
