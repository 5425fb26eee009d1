import type { FaultDirection } from '../shop/recall';
import type { Role } from '../shop/vocabulary';

/** What a gauge’s fault may have let through. */
export interface FaultMeaning {
  /** What ends accepted with it may be. */
  readonly effect:
    | 'oversize-passed'
    | 'undersize-passed'
    | 'wrong-cone-passed'
    | 'wrong-length-passed'
    | 'false-refusals'
    | 'gauges-in-doubt'
    | 'unknown';
  /** 1: look first, a weak joint may result. 3: nothing bad can have passed, good ends may have been refused. */
  readonly urgency: 1 | 2 | 3;
  readonly sentence: string;
}

/**
 * What the direction of a gauge’s fault means for the ends accepted with it. The GO ring is the largest thread that may
 * pass: worn large it passes oversize threads, closed it refuses good ones. The NOT GO ring is the smallest: closed it
 * no longer runs on thin threads and so passes undersize ones, opened it runs on good ones. A master passes its own
 * fault on to what is set on it. Source: the definitions of the limit gauges in ASME B1.2 as quoted in gauging notes; urgency is common practice, no source.
 */
export function faultMeaning({
  role,
  direction,
}: {
  readonly role: Role;
  readonly direction: FaultDirection;
}): FaultMeaning {
  return MEANING[role]?.[direction] ?? OTHER;
}

const OTHER: FaultMeaning = {
  effect: 'unknown',
  urgency: 1,
  sentence: 'What it measured may be off either way. Look at every end it was used on.',
};

const EITHER = 'The direction is not known, so both ways count until it is.';

/** Accepts nothing itself: what was checked or set on it is in doubt, each gauge with a recall of its own. */
const THROUGH_GAUGES = 'Open the recall of each gauge checked or set on it since.';

const SEAT = `Cones blued on it and cone gauges checked on it may be off the nose. ${THROUGH_GAUGES}`;

const MEANING: Partial<Record<Role, Record<FaultDirection, FaultMeaning>>> = {
  'go-ring': {
    large: {
      effect: 'oversize-passed',
      urgency: 2,
      sentence:
        'Worn or opened, it may have passed oversize threads: the collar goes on tight, or not at all.',
    },
    small: {
      effect: 'false-refusals',
      urgency: 3,
      sentence:
        'Closed, it was stricter than it should be: what it passed is good, but it may have refused good ends.',
    },
    unknown: {
      effect: 'oversize-passed',
      urgency: 2,
      sentence: `It may have passed oversize threads, a tight collar, or refused good ones. ${EITHER}`,
    },
  },
  'not-go-ring': {
    small: {
      effect: 'undersize-passed',
      urgency: 1,
      sentence: 'Closed, it may have passed undersize threads: a weak joint. Look at these ends first.',
    },
    large: {
      effect: 'false-refusals',
      urgency: 3,
      sentence: 'Opened, it ran on good threads: what it passed is good, but it may have refused good ends.',
    },
    unknown: {
      effect: 'undersize-passed',
      urgency: 1,
      sentence: `It may have passed undersize threads, a weak joint, or refused good ones. ${EITHER}`,
    },
  },
  'cone-gauge': {
    large: {
      effect: 'wrong-cone-passed',
      urgency: 2,
      sentence:
        'Worn open at the mouth, it may have passed cones that are too wide or too long: contact off the nose.',
    },
    small: {
      effect: 'wrong-cone-passed',
      urgency: 2,
      sentence:
        'Built up or closed, it may have passed cones that are too slim or too short: contact off the nose.',
    },
    unknown: {
      effect: 'wrong-cone-passed',
      urgency: 2,
      sentence: `It may have passed cones that do not touch near the nose. ${EITHER} Blue them on a master seat.`,
    },
  },
  'length-gauge': {
    large: {
      effect: 'wrong-length-passed',
      urgency: 2,
      sentence:
        'Too long, it may have passed threads that are too long: too many threads show behind the cone.',
    },
    small: {
      effect: 'wrong-length-passed',
      urgency: 2,
      sentence: 'Too short, it may have passed threads that are too short for the collar.',
    },
    unknown: {
      effect: 'wrong-length-passed',
      urgency: 2,
      sentence: `It may have passed threads that are too long or too short. ${EITHER}`,
    },
  },
  'setting-plug': {
    large: {
      effect: 'gauges-in-doubt',
      urgency: 2,
      sentence: `Rings set on it are too large: a GO ring may have passed oversize threads. ${THROUGH_GAUGES}`,
    },
    small: {
      effect: 'gauges-in-doubt',
      urgency: 1,
      sentence: `Rings set on it are too small: a NOT GO ring may have passed undersize threads, a weak joint. ${THROUGH_GAUGES}`,
    },
    unknown: {
      effect: 'gauges-in-doubt',
      urgency: 1,
      sentence: `Rings set on it may be too large or too small. ${EITHER} ${THROUGH_GAUGES}`,
    },
  },
  'master-seat': {
    large: { effect: 'gauges-in-doubt', urgency: 2, sentence: SEAT },
    small: { effect: 'gauges-in-doubt', urgency: 2, sentence: SEAT },
    unknown: { effect: 'gauges-in-doubt', urgency: 2, sentence: SEAT },
  },
};
