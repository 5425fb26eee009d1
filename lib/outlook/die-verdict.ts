/** Go, go with a standby at hand, or swap first. */
export type DieVerdict = 'go' | 'go-with-standby' | 'swap';

/** Below even chances a tool is swapped before the job; from the required probability on it goes. Common practice, no source. */
const FLOOR = 0.5;

/**
 * The verdict on a tool for a job, from the probability that it finishes and what the job requires.
 * @example dieVerdict({ probability: 0.81, required: 0.9 }) // => "go-with-standby"
 */
export function dieVerdict({ probability, required }: { probability: number; required: number }): DieVerdict {
  if (probability >= required) return 'go';
  return probability >= FLOOR ? 'go-with-standby' : 'swap';
}
