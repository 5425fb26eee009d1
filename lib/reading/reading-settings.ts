import type { GoFeel, Grade } from './reading';

/** A share of the life used up, 0 to 1, and how far such a reading may be out (one standard deviation). */
export interface WornShare {
  readonly worn: number;
  readonly sd: number;
}

/** How a shop turns what it sees into a share of life: data, kept with its settings and shown. */
export interface ReadingSettings {
  /** Mean flank wear land at which a blade is worn out, mm. */
  readonly landLimitMm: number;
  /** Error of a land read with a loupe, mm. */
  readonly landSdMm: number;
  /** Where in the tolerance, from its lower limit (0) to its upper (1), a new die cuts. */
  readonly newDieCutsAt: number;
  /** Error of a pitch diameter by each instrument, mm. */
  readonly pitchDiameterSdMm: { readonly wires: number; readonly micrometer: number };
  /** How far wear strays from a steady course, whatever the instrument: standard deviation of the share. */
  readonly courseSd: number;
  readonly go: Readonly<Record<GoFeel, WornShare>>;
  /** A NOT GO ring that runs on by at least so many turns: the thread is small, as a die far from worn cuts it. */
  readonly notGoRunsOn: WornShare & { readonly fromTurns: number };
  readonly grade: Readonly<Record<Grade, WornShare>>;
}

/** Flank wear land that ends a tool-life test, mm. Source: published, from memory. ISO 3685, average land 0.3 mm. */
export const TOOL_TEST_LAND_MM = 0.3;
/** The same for a sealing cone, where a rough cut leaks sooner, mm. Common practice, no source. */
export const CONE_LAND_MM = 0.15;

/** What a shop starts from. Common practice, no source: this project's stated defaults. */
export const DEFAULT_READING_SETTINGS: ReadingSettings = {
  landLimitMm: TOOL_TEST_LAND_MM,
  landSdMm: 0.02,
  newDieCutsAt: 0.3,
  pitchDiameterSdMm: { wires: 0.005, micrometer: 0.008 },
  courseSd: 0.12,
  go: {
    free: { worn: 0.35, sd: 0.3 },
    tight: { worn: 0.85, sd: 0.18 },
    refuses: { worn: 1, sd: 0.12 },
  },
  notGoRunsOn: { fromTurns: 1, worn: 0.15, sd: 0.25 },
  grade: {
    fresh: { worn: 0.1, sd: 0.15 },
    light: { worn: 0.35, sd: 0.18 },
    marked: { worn: 0.7, sd: 0.18 },
    'at-limit': { worn: 1, sd: 0.15 },
  },
};
