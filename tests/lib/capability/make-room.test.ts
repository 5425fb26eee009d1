import { describe, expect, it } from 'vitest';
import { heldBy, makeRoom, type Sharing, type TakerGroup } from '@/lib/capability/make-room';

/** Pools with something left, one draw; groups with what they hold. */
function sharing(left: number[], groups: { pools: number[]; holds: Record<number, number> }[]): Sharing {
  const state: Sharing = { left: left.map((amount) => Float64Array.of(amount)), holders: left.map(() => []) };
  for (const { pools, holds } of groups) {
    const group: TakerGroup = { pools, held: new Map() };
    for (const [p, amount] of Object.entries(holds)) heldBy(group, Number(p), state).fill(amount);
  }
  return state;
}

const leftOf = (state: Sharing) => state.left.map((amounts) => amounts[0]);

// source: hand. Three pools in a row, each group reaching two of them.
describe('makeRoom', () => {
  it('moves a holder to its other pool, no further than wanted', () => {
    const state = sharing([0, 5], [{ pools: [0, 1], holds: { 0: 4 } }]);
    expect(makeRoom(state, [0], 3, 0)).toBe(3);
    expect(leftOf(state)).toEqual([3, 2]);
  });

  it('moves along a chain of holders', () => {
    const groups: { pools: number[]; holds: Record<number, number> }[] = [
      { pools: [0, 1], holds: { 0: 4 } },
      { pools: [1, 2], holds: { 1: 6 } },
    ];
    const state = sharing([0, 0, 5], groups);
    expect(makeRoom(state, [0], 10, 0)).toBe(4);
    expect(leftOf(state)).toEqual([4, 0, 1]);
  });

  it('frees nothing where nobody can move', () => {
    const state = sharing([0, 5], [{ pools: [0], holds: { 0: 4 } }]);
    expect(makeRoom(state, [0], 3, 0)).toBe(0);
    expect(leftOf(state)).toEqual([0, 5]);
  });
});

it('heldBy begins a record with nothing and keeps it', () => {
  // source: hand.
  const state = sharing([1], []);
  const group: TakerGroup = { pools: [0], held: new Map() };
  const record = heldBy(group, 0, state);
  expect([...record]).toEqual([0]);
  expect(heldBy(group, 0, state)).toBe(record);
  expect(state.holders[0]).toEqual([group]);
});
