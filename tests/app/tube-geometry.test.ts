import { describe, expect, it } from 'vitest';
import {
  crestLean,
  silhouette,
  stations,
  type TubeEndShape,
  threadLines,
} from '@/app/_shared/drawing/tube-geometry';

const shape = (hand: 'LH' | 'RH'): TubeEndShape => ({
  odIn: 0.5625,
  noseIn: 0.281,
  threadLengthIn: 15 / 16,
  tpi: 18,
  hand,
  coneAngleDeg: 59,
  bodyIn: 0.3,
});

/** Projects one turn of a helix along x and gives the x of its visible top and bottom, seen from the front. */
function visibleTopMinusBottom(rightHand: boolean, pitch: number): number {
  const turnSign = rightHand ? 1 : -1;
  const points = Array.from({ length: 2001 }, (_, i) => {
    const theta = turnSign * ((i / 2000) * 2 * Math.PI - Math.PI);
    return { x: (turnSign * theta * pitch) / (2 * Math.PI), y: Math.cos(theta), z: Math.sin(theta) };
  });
  const front = points.filter((p) => p.z >= -1e-9).sort((a, b) => b.y - a.y);
  const connected = rightHand ? front.filter((p) => p.x >= -1e-9) : front.filter((p) => p.x <= 1e-9);
  const [top, bottom] = [connected[0], connected[connected.length - 1]];
  if (!top || !bottom) throw new Error('no visible half');
  return top.x - bottom.x;
}

describe('hand of the drawn thread', () => {
  // source: formula. Helix (Pθ/2π, r cos θ, ±r sin θ): right hand with y × z along +x; the half with z > 0 is seen.
  it.each([
    ['RH', true],
    ['LH', false],
  ] as const)('%s crests lean as a projected helix does', (hand, rightHand) => {
    expect(crestLean(hand, 1 / 18)).toBeCloseTo(visibleTopMinusBottom(rightHand, 1 / 18), 6);
  });

  // source: hand. Left hand leans "/" on a horizontal axis: the top end (y negative on screen) is further right.
  it('draws left-hand crests with the top to the right', () => {
    for (const line of threadLines(shape('LH'), 0)) {
      expect(line.y1).toBeLessThan(line.y2);
      expect(line.x1).toBeGreaterThan(line.x2);
    }
    for (const line of threadLines(shape('RH'), 0)) expect(line.x1).toBeLessThan(line.x2);
  });
});

describe('to scale', () => {
  // source: published. TRADE table 4.1: 9/16 high pressure has 16.9 turns and a cone 6.3 mm long (nose .281 in, 59°).
  it('has the turns and the cone length of the table', () => {
    expect(threadLines(shape('LH'), 0).length).toBeGreaterThanOrEqual(16);
    expect(threadLines(shape('LH'), 0).length).toBeLessThanOrEqual(17);
    const at = stations(shape('LH'));
    expect((at.nose - at.threadEnd) * 25.4).toBeCloseTo(6.3, 1);
    expect(at.threadEnd - at.threadStart).toBeCloseTo(15 / 16, 12);
  });

  // source: identity. Crest lines end on the silhouette's peaks, on both sides.
  it('ends its crest lines on the peaks of the silhouette', () => {
    const top = silhouette(shape('LH'), -1).filter((p) => Math.abs(p.y + 0.5625 / 2) < 1e-9);
    const bottom = silhouette(shape('LH'), 1).filter((p) => Math.abs(p.y - 0.5625 / 2) < 1e-9);
    for (const line of threadLines(shape('LH'), 0)) {
      expect(top.some((p) => Math.abs(p.x - line.x1) < 1e-9)).toBe(true);
      expect(bottom.some((p) => Math.abs(p.x - line.x2) < 1e-9)).toBe(true);
    }
  });
});
