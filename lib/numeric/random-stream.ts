/** A source of figures evenly spread over (0, 1), never 0 and never 1. */
export type UniformStream = () => number;

/**
 * Repeatable stream of chance figures named by a key: the same key always gives the same figures, and two keys give
 * unrelated ones. So a tool's future depends on its own id, and adding a tool to the shop changes no other tool's.
 * Source: FNV-1a hash of the key with a final mix, then sfc32 (C. Doty-Humphrey, PractRand), both from memory.
 */
export function streamOfKey(key: string): UniformStream {
  let a = hashKey(key, 0x811c9dc5);
  let b = hashKey(key, 0x9e3779b9);
  let c = hashKey(key, 0x85ebca6b);
  let counter = 1;
  const next = (): number => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return sum >>> 0;
  };
  for (let i = 0; i < 12; i++) next();
  return () => (next() + 0.5) / 4294967296;
}

/** 32-bit hash of a text: FNV-1a over its UTF-16 units, then a finishing mix so that near keys part. */
export function hashKey(key: string, seed: number): number {
  let hash = seed | 0;
  for (let i = 0; i < key.length; i++) {
    const unit = key.charCodeAt(i);
    hash = Math.imul(hash ^ (unit & 255), 16777619);
    hash = Math.imul(hash ^ (unit >>> 8), 16777619);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

/**
 * `count` figures over (0, 1), one in each of `count` equal strata, in an order shuffled by the key (a Latin hypercube
 * when several keys are used side by side). For one tool's chance over the draws: far less noise than plain chance.
 * Source: formula (McKay, Beckman and Conover 1979; Fisher and Yates shuffle).
 */
export function stratifiedUniforms(key: string, count: number): Float64Array {
  const random = streamOfKey(key);
  const values = new Float64Array(count);
  for (let i = 0; i < count; i++) values[i] = (i + random()) / count;
  shuffle(values, random);
  return values;
}

/**
 * `count` unit exponential figures, the middle of each of `count` equally likely strata, in an order shuffled by the key: the
 * chance of one tool over the draws. −ln(1 − (i + ½)/count). Source: formula (inverse transform of even strata).
 */
export function stratifiedExponentials(key: string, count: number): Float64Array {
  const values = exponentialStrata(count).slice();
  shuffle(values, streamOfKey(key));
  return values;
}

/** The strata of the last few counts asked for: always the same figures, so worked out once. */
const strata = new Map<number, Float64Array>();

function exponentialStrata(count: number): Float64Array {
  const known = strata.get(count);
  if (known !== undefined) return known;
  const made = Float64Array.from({ length: count }, (_, i) => -Math.log1p(-(i + 0.5) / count));
  if (strata.size >= 8) strata.clear();
  strata.set(count, made);
  return made;
}

/** Fisher and Yates, in place. */
function shuffle(values: Float64Array, random: UniformStream): void {
  for (let i = values.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    const held = values[i] as number;
    values[i] = values[j] as number;
    values[j] = held;
  }
}
