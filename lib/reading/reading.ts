import { z } from 'zod';
import type { ExposurePart } from '../life/observation';

/** How far gone an edge looks to a trained eye with a loupe. Common practice, no source. */
export const GRADES = ['fresh', 'light', 'marked', 'at-limit'] as const;
export type Grade = (typeof GRADES)[number];
export const GRADE_LABEL: Record<Grade, string> = {
  fresh: 'fresh',
  light: 'light wear',
  marked: 'marked wear',
  'at-limit': 'at its limit',
};

/** How the GO ring runs on the thread that the die last cut. Common practice, no source. */
export const GO_FEELS = ['free', 'tight', 'refuses'] as const;
export type GoFeel = (typeof GO_FEELS)[number];
export const GO_FEEL_LABEL: Record<GoFeel, string> = {
  free: 'runs on freely',
  tight: 'runs on tight',
  refuses: 'refuses',
};

/** What may be read off an edge: of which kind of edge, and how a screen names it. Common practice, no source. */
export const READING_METHODS = ['flank-land', 'pitch-diameter', 'ring', 'grade'] as const;
export type ReadingMethod = (typeof READING_METHODS)[number];
export const READING_METHOD_LABEL: Record<ReadingMethod, string> = {
  'flank-land': 'flank wear land',
  'pitch-diameter': 'pitch diameter of the last thread',
  ring: 'GO and NOT GO ring',
  grade: 'graded by eye',
};

const mm = (most: number, words: string) => z.number(words).min(0, words).max(most, words);

/** What was seen: the content of a reading, by how it was taken. Lengths in mm. */
export const FindingSchema = z.discriminatedUnion('method', [
  z.object({
    method: z.literal('flank-land'),
    landMm: mm(5, 'The wear land is a length from 0 to 5 mm.'),
  }),
  z.object({
    method: z.literal('pitch-diameter'),
    /** Of the thread that the die last cut. */
    pitchDiameterMm: mm(200, 'The pitch diameter is a length up to 200 mm.'),
    minMm: mm(200, 'The lower limit is a length up to 200 mm.'),
    maxMm: mm(200, 'The upper limit is a length up to 200 mm.'),
    instrument: z.enum(['wires', 'micrometer']),
    /** What was read over three wires, where the pitch diameter was found from it. */
    overWires: z
      .object({
        overWiresMm: mm(250, 'The measurement over wires is a length up to 250 mm.'),
        wireMm: mm(20, 'The wires are up to 20 mm thick.'),
      })
      .optional(),
  }),
  z.object({
    method: z.literal('ring'),
    go: z.enum(GO_FEELS),
    /** Turns that the NOT GO ring runs on; null when it was not tried. */
    notGoTurns: z.number().min(0).max(40).nullable().default(null),
  }),
  z.object({ method: z.literal('grade'), grade: z.enum(GRADES) }),
]);
export type Finding = z.infer<typeof FindingSchema>;

/** A reading of one edge, with all that the edge had cut when it was taken. */
export interface Reading {
  readonly toolId: string;
  readonly edgeNo: number;
  readonly finding: Finding;
  readonly exposure: readonly ExposurePart[];
}

/** A reading as the fusion reads it: share of the life that looks used up, 0 to 1, and how far it may be out. */
export interface WornReading {
  readonly worn: number;
  readonly sd: number;
  /** All that the edge had cut when the reading was taken. */
  readonly exposure: readonly ExposurePart[];
}
