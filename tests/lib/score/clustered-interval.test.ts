import { describe, expect, it } from 'vitest';
import { streamOfKey } from '@/lib/numeric/random-stream';
import { clusteredInterval } from '@/lib/score/clustered-interval';
import { wilsonInterval } from '@/lib/score/wilson';

const cases = (hits: readonly (0 | 1)[], edgeOf: (i: number) => string | undefined) =>
  hits.map((hit, i) => ({ hit: hit === 1, edge: edgeOf(i) }));

describe('an interval over cases that share edges', () => {
  // source: identity. Every case an edge of its own, or no edge named: Wilson's.
  it("is Wilson's without sharing", () => {
    const hits = [1, 0, 1, 1, 0, 1] as const;
    expect(clusteredInterval(cases(hits, () => undefined))).toEqual(wilsonInterval(4, 6));
    expect(clusteredInterval(cases(hits, (i) => `${i}`))).toEqual(wilsonInterval(4, 6));
  });

  // source: identity. Each case told five times over is no more than once told; Kish: D = 5·m/(m − 1).
  it('does not count one life five times', () => {
    const once = Array.from({ length: 40 }, (_, i): 0 | 1 => (i % 4 === 0 ? 0 : 1));
    const five = once.flatMap((hit) => [hit, hit, hit, hit, hit]);
    const { low, high } = clusteredInterval(cases(five, (i) => `${Math.floor(i / 5)}`));
    const alone = wilsonInterval(0.75 * 39, 39);
    expect(low).toBeCloseTo(alone.low, 12);
    expect(high).toBeCloseTo(alone.high, 12);
  });

  // source: hand. Nothing to tell the spread by: as many cases as there are edges.
  it('falls back on the number of edges', () => {
    expect(clusteredInterval(cases([1, 1, 1, 1], (i) => `${i % 2}`))).toEqual(wilsonInterval(2, 2));
    expect(clusteredInterval(cases([1, 0], () => 'one'))).toEqual(wilsonInterval(0.5, 1));
  });

  // source: formula. 400 samples of 40 edges with one to nine cases each, all cases of an edge alike: a 95 % interval holds the true
  // share in 95 of 100, within 3.3 standard errors (0.036); Wilson's over the cases does not come near it.
  it('holds the true share as often as it says, which the plain interval does not', () => {
    const random = streamOfKey('clustered-interval.test');
    let [held, plain] = [0, 0];
    for (let sample = 0; sample < 400; sample++) {
      const drawn = Array.from({ length: 40 }, (_, edge) => {
        const hit = random() < 0.7;
        return Array.from({ length: 1 + Math.floor(9 * random()) }, () => ({ hit, edge: `${edge}` }));
      }).flat();
      const inside = ({ low, high }: { low: number; high: number }): boolean => low <= 0.7 && 0.7 <= high;
      if (inside(clusteredInterval(drawn))) held++;
      if (inside(wilsonInterval(drawn.filter(({ hit }) => hit).length, drawn.length))) plain++;
    }
    expect(Math.abs(held / 400 - 0.95)).toBeLessThan(0.036);
    expect(plain / 400).toBeLessThan(0.85);
  });
});
