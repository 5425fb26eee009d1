/**
 * Where the lines of a tube end fall on paper, in inches from the left end of the drawing, axis at y = 0, y down.
 *
 * Which way a thread leans. Lay the axis along +x to the right, the viewer in front (+z), y up. A right-hand helix
 * about x is (P·θ/2π, r·cos θ, r·sin θ). The half that faces the viewer has sin θ > 0, θ from 0 to π: it starts at the
 * top (θ = 0) and reaches the bottom (θ = π) half a pitch FURTHER RIGHT. So right-hand crests lean "\" and left-hand
 * crests lean "/": the top end lies half a pitch to the right of the bottom end. Turning the tube end for end does not
 * change the hand. tests/app/tube-geometry.test.ts checks this against a projected helix.
 */
import type { Hand } from '@/lib/shop/vocabulary';

export interface TubeEndShape {
  readonly odIn: number;
  readonly noseIn: number;
  readonly threadLengthIn: number;
  readonly tpi: number;
  readonly hand: Hand;
  readonly coneAngleDeg: number;
  /** Plain tube shown behind the thread. */
  readonly bodyIn: number;
}

export interface Line {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

export interface Stations {
  readonly threadStart: number;
  readonly threadEnd: number;
  readonly nose: number;
}

/** Axial stations: body, thread (up to the cone's large end), cone. Cone length (D - d)/(2·tan α). */
export function stations(shape: TubeEndShape): Stations {
  const halfAngle = (shape.coneAngleDeg / 2) * (Math.PI / 180);
  const threadEnd = shape.bodyIn + shape.threadLengthIn;
  return {
    threadStart: shape.bodyIn,
    threadEnd,
    nose: threadEnd + (shape.odIn - shape.noseIn) / 2 / Math.tan(halfAngle),
  };
}

/** Depth of the drawn V, 0.61343 P (external thread height of the unified form; ASME B1.1, from memory). */
export function threadDepth(tpi: number): number {
  return 0.61343 / tpi;
}

/** How far the top end of a visible crest lies to the right of its bottom end: +P/2 for LH, -P/2 for RH. */
export function crestLean(hand: Hand, pitchIn: number): number {
  return hand === 'LH' ? pitchIn / 2 : -pitchIn / 2;
}

/** Slanting lines of the thread. `phase` 0 gives crests (at the full radius), 0.5 roots. Only whole lines are drawn. */
export function threadLines(shape: TubeEndShape, phase: 0 | 0.5): Line[] {
  const pitch = 1 / shape.tpi;
  const { threadStart, threadEnd } = stations(shape);
  const radius = shape.odIn / 2 - (phase === 0 ? 0 : threadDepth(shape.tpi));
  const half = crestLean(shape.hand, pitch) / 2;
  const lines: Line[] = [];
  for (let x = threadEnd - pitch / 4 - phase * pitch; x - pitch / 4 >= threadStart - 1e-9; x -= pitch) {
    lines.push({ x1: x + half, y1: -radius, x2: x - half, y2: radius });
  }
  return lines;
}

/** Crests of the small mark: every n-th one, with a lean chosen by the drawer so that the hand can be seen. */
export function markLines(shape: TubeEndShape, everyNth: number, leanIn: number): Line[] {
  const pitch = 1 / shape.tpi;
  const gap = pitch * everyNth;
  const { threadStart, threadEnd } = stations(shape);
  const half = Math.sign(crestLean(shape.hand, pitch)) * (leanIn / 2);
  const lines: Line[] = [];
  for (let x = threadEnd - leanIn / 2; x - leanIn / 2 >= threadStart - 1e-9; x -= gap) {
    lines.push({ x1: x + half, y1: -shape.odIn / 2, x2: x - half, y2: shape.odIn / 2 });
  }
  return lines;
}

/** Saw-tooth silhouette along the thread, from its start to its end, on the top (-1) or bottom (+1) side. */
export function silhouette(shape: TubeEndShape, side: -1 | 1): { x: number; y: number }[] {
  const pitch = 1 / shape.tpi;
  const depth = threadDepth(shape.tpi);
  const { threadStart, threadEnd } = stations(shape);
  const crest = threadEnd - pitch / 4 - side * (crestLean(shape.hand, pitch) / 2);
  const radiusAt = (x: number) => {
    const turn = Math.abs((x - crest) / pitch) % 1;
    return shape.odIn / 2 - depth * (1 - Math.abs(1 - 2 * turn));
  };
  const knots = [threadStart, threadEnd];
  const first = Math.ceil((threadStart - crest) / (pitch / 2));
  for (let k = first; crest + (k * pitch) / 2 < threadEnd; k += 1) knots.push(crest + (k * pitch) / 2);
  return knots.sort((a, b) => a - b).map((x) => ({ x, y: side * radiusAt(x) }));
}
