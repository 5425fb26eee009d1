import { expect, it } from 'vitest';
import type { LifePool } from '@/lib/capability/life-pool';
import { waitingEnds } from '@/lib/capability/waiting-ends';

// source: hand. Ten turns an end. 25 turns here; 30 more on day 8 in every draw; 100 more on day 4, 12 or never by draw.
it('adds what comes late, each draw on its own day', () => {
  const never = Number.POSITIVE_INFINITY;
  const supply = [Float64Array.of(30, 30, 30), Float64Array.of(100, 100, 100), Float64Array.of(7, 7, 7)];
  const pools: LifePool[] = [
    { reach: [], lateInDays: new Map([[0, 8]]), supply: supply[0] as Float64Array },
    { reach: [], lateInDays: new Map([[0, [4, 12, never]]]), supply: supply[1] as Float64Array },
    { reach: [0], lateInDays: new Map(), supply: supply[2] as Float64Array },
  ];
  const capacity = Float64Array.of(25, 25, 25);
  const wear = { exposurePerEnd: 10, factors: Float64Array.of(1, 1, 1) };
  const waiting = waitingEnds(pools, supply, 0, capacity, wear);
  expect(waiting.inDays).toEqual([4, 8, 12]);
  expect([3, 4, 8, 12].map((day) => [...waiting.endsBy(day)])).toEqual([
    [2, 2, 2],
    [12, 2, 2],
    [15, 5, 5],
    [15, 15, 5],
  ]);
});

// source: hand. Four ends have this cut already: with 25 turns here, two more of ten turns make six.
it('counts the ends that have the cut already', () => {
  const wear = { exposurePerEnd: 10, factors: Float64Array.of(1), endsCut: 4 };
  const waiting = waitingEnds([], [], 0, Float64Array.of(25), wear);
  expect([...waiting.endsBy(0)]).toEqual([6]);
});
