/** Nearer than this is the point itself: its weight would have no end. */
const SAME = 1e-290;

/**
 * `count` Chebyshev points from 0 to `high`, ascending, both ends among them: where to keep a smooth function so that it
 * can be read off in between to the last digit. Domain: count >= 2, high > 0. Source: formula (second kind).
 */
export function chebyshevPoints(count: number, high: number): Float64Array {
  return Float64Array.from(
    { length: count },
    (_, i) => high * Math.sin((Math.PI * i) / (2 * (count - 1))) ** 2,
  );
}

/** Barycentric weights of those points: alternating signs, halves at the ends. Source: formula (Salzer 1972). */
export function barycentricWeights(count: number): Float64Array {
  return Float64Array.from({ length: count }, (_, i) => {
    const size = i === 0 || i === count - 1 ? 0.5 : 1;
    return i % 2 === 0 ? size : -size;
  });
}

/**
 * With what weights the values at the points add up to the value at x: Σ row[j]·f(points[j]) = f(x) for polynomials of
 * degree below the number of points. Domain: x between the first and the last point. Source: formula (barycentric).
 */
export function interpolationRow(points: Float64Array, weights: Float64Array, x: number): Float64Array {
  const row = new Float64Array(points.length);
  let total = 0;
  for (let j = 0; j < points.length; j++) {
    const distance = x - (points[j] as number);
    if (Math.abs(distance) < SAME) return row.fill(0).fill(1, j, j + 1);
    row[j] = (weights[j] as number) / distance;
    total += row[j] as number;
  }
  for (let j = 0; j < row.length; j++) row[j] = (row[j] as number) / total;
  return row;
}
