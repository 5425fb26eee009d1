import { normalCdf, normalQuantile } from '@/lib/numeric/normal';

/** The law that true lives follow in a simulated shop. */
export type TrueLaw = 'weibull' | 'lognormal';

/** How the true figures of a sort of shop come about, and how such shops work. */
export interface ReachWorld {
  /** Shape of the lives: for lognormal lives that of the Weibull law whose log lives scatter as much. */
  readonly shape: (gauss: () => number) => number;
  /** The true log life of the 3/8 die less the log of what was typed. */
  readonly guessMiss: (gauss: () => number) => number;
  /** True spreads of the size exponent, of parts, of log material factors. */
  readonly spread: { readonly size: number; readonly part: number; readonly material: number };
  readonly livesPerIncident: number;
  /** Sizes of die in use, dies of a size that are used in turn. */
  readonly sizes: 1 | 2 | 3;
  readonly inTurn: number;
  /** Materials of the jobs, each as likely. */
  readonly materials: readonly ('ref' | '2507' | 'ti')[];
  /** Ends of a job: the fewest, and how many times as many the most. */
  readonly ends: { readonly from: number; readonly times: number };
  /** False: nobody typed how long the die is good for. */
  readonly typed: boolean;
}

/** "Give or take a factor of": what every shop typed with its first guess. */
export const GUESS_FACTOR = 2;
const GUESS_SD = Math.log(GUESS_FACTOR) / normalQuantile(0.9);

const asBelieved: ReachWorld = {
  shape: (gauss) => 2 * Math.exp(0.35 * gauss()),
  guessMiss: (gauss) => GUESS_SD * gauss(),
  spread: { size: 0.4, part: 0.3, material: 0.4 },
  livesPerIncident: 20,
  sizes: 3,
  inTurn: 2,
  materials: ['ref', 'ref', '2507', 'ti'],
  ends: { from: 4, times: 15 },
  typed: true,
};

const simple: ReachWorld = {
  ...asBelieved,
  shape: () => 2,
  livesPerIncident: Number.POSITIVE_INFINITY,
  sizes: 1,
  materials: ['ref'],
};

/**
 * Sorts of shops. `as-believed`: truth drawn from the model's own priors. `misjudged`: shapes evenly over 1.4 to 3.5 (wear more
 * regular than believed), parts and sizes more alike. The others are each unlike the priors in one way that a shop may well be.
 */
export const WORLDS = {
  'as-believed': asBelieved,
  misjudged: {
    ...asBelieved,
    shape: (gauss) => 1.4 + 2.1 * normalCdf(gauss()),
    spread: { size: 0.2, part: 0.2, material: 0.3 },
    livesPerIncident: 15,
  },
  'shape 1.2': { ...asBelieved, shape: () => 1.2 },
  'shape 4': { ...asBelieved, shape: () => 4 },
  'one size, one material': simple,
  'typed twice too long': { ...asBelieved, guessMiss: () => -Math.LN2 },
  'typed well': { ...asBelieved, guessMiss: (gauss) => 0.2 * gauss() },
  'nothing typed': { ...asBelieved, typed: false },
  'eight dies in turn': { ...asBelieved, inTurn: 8 },
  'long jobs': { ...asBelieved, ends: { from: 30, times: 5 } },
  'short jobs': { ...asBelieved, ends: { from: 1, times: 12 } },
} as const satisfies Record<string, ReachWorld>;

export type WorldName = keyof typeof WORLDS;
