import { z } from 'zod';
import { stamped } from './entry-fields';
import { form, measureField } from './field';

const share = (name: string) =>
  form({
    worn: measureField(name, { min: 0, max: 1 }),
    sd: measureField('How far it may be out', { min: 0.02, max: 1 }),
  });

/**
 * How the shop turns what it sees of an edge into a share of its life: the whole content of `reading-settings-set`.
 * Lengths in mm; a share of a life is 0 (new) to 1 (worn out), `sd` how far such a reading may be out (one standard deviation).
 */
export const ReadingSettingsSchema = form({
  /** Mean flank wear land at which a blade is worn out. */
  landLimitMm: measureField('The wear land at its limit', { min: 0.02, max: 5 }),
  landSdMm: measureField('The error of a wear land', { min: 0.001, max: 1 }),
  /** Where in the tolerance, from its lower limit (0) to its upper (1), a new die cuts. */
  newDieCutsAt: measureField('Where a new die cuts', { min: 0, max: 0.9 }),
  pitchDiameterSdMm: form({
    wires: measureField('The error over wires', { min: 0.0005, max: 0.2 }),
    micrometer: measureField('The error of a thread micrometer', { min: 0.0005, max: 0.2 }),
  }),
  /** How far wear strays from a steady course, whatever the instrument. */
  courseSd: measureField('The unevenness of wear', { min: 0.02, max: 0.5 }),
  go: form({ free: share('GO runs freely'), tight: share('GO runs tight'), refuses: share('GO refuses') }),
  /** A NOT GO ring that runs on by at least so many turns. */
  notGoRunsOn: form({
    fromTurns: measureField('Turns of NOT GO', { min: 0.25, max: 20 }),
    worn: measureField('NOT GO runs on', { min: 0, max: 1 }),
    sd: measureField('How far it may be out', { min: 0.02, max: 1 }),
  }),
  grade: form({
    fresh: share('Fresh'),
    light: share('Light wear'),
    marked: share('Marked wear'),
    'at-limit': share('At its limit'),
  }),
});

/** What the form of the reading settings sends. */
export const SetReadingSettingsInput = z.object({
  ...stamped,
  settings: ReadingSettingsSchema,
});
export type SetReadingSettings = z.output<typeof SetReadingSettingsInput>;
