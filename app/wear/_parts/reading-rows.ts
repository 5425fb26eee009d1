import type { ReadingSettings } from '@/lib/reading/reading-settings';

/** A figure of the reading settings as the form asks for it; `name` is its path in the settings. */
export interface ReadingField {
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number;
}

export interface ReadingRow {
  readonly words: string;
  /** Where this project's own figure comes from. */
  readonly source: string;
  readonly fields: readonly ReadingField[];
}

const COMMON = 'common practice, no source';

/** The settings row by row, each figure in its field. Shares of a life are asked for in per cent. */
export function readingRows(settings: ReadingSettings): ReadingRow[] {
  const { landLimitMm, landSdMm, newDieCutsAt, pitchDiameterSdMm, courseSd, go, notGoRunsOn, grade } =
    settings;
  const mm = (name: string, label: string, value: number): ReadingField => ({
    name,
    label,
    unit: 'mm',
    value,
  });
  const percent = (name: string, label: string, share: number): ReadingField => ({
    ...{ name, label, unit: '%' },
    value: Number((100 * share).toPrecision(12)),
  });
  const seen = (words: string, path: string, { worn, sd }: { worn: number; sd: number }): ReadingRow => ({
    ...{ words, source: COMMON },
    fields: [
      percent(`${path}.worn`, 'Share of its life used', worn),
      percent(`${path}.sd`, 'Give or take', sd),
    ],
  });
  return [
    {
      words: 'A blade is worn out at a mean flank wear land of so much, read with a loupe to within so much',
      source:
        '0.3 mm is the average land that ends a tool-life test in ISO 3685, from memory; many hold 0.15 mm on a sealing cone: common practice, no source',
      fields: [
        mm('landLimitMm', 'Wear land at its limit', landLimitMm),
        mm('landSdMm', 'Give or take', landSdMm),
      ],
    },
    {
      words:
        'A new die cuts so far up the tolerance of the pitch diameter; from there to the upper limit is its life',
      source: COMMON,
      fields: [percent('newDieCutsAt', 'Up the tolerance', newDieCutsAt)],
    },
    {
      words: 'A pitch diameter is read to within so much',
      source: COMMON,
      fields: [
        mm('pitchDiameterSdMm.wires', 'Over wires, give or take', pitchDiameterSdMm.wires),
        mm('pitchDiameterSdMm.micrometer', 'Thread micrometer, give or take', pitchDiameterSdMm.micrometer),
      ],
    },
    {
      words: 'Wear does not run evenly: at the same use, edges differ by so much of a life',
      source: COMMON,
      fields: [percent('courseSd', 'Give or take', courseSd)],
    },
    seen('The GO ring runs on freely', 'go.free', go.free),
    seen('The GO ring runs on tight', 'go.tight', go.tight),
    seen('The GO ring refuses', 'go.refuses', go.refuses),
    {
      ...seen('The NOT GO ring runs on by so many turns, GO runs freely', 'notGoRunsOn', notGoRunsOn),
      fields: [
        { name: 'notGoRunsOn.fromTurns', label: 'From', unit: 'turns', value: notGoRunsOn.fromTurns },
        percent('notGoRunsOn.worn', 'Share of its life used', notGoRunsOn.worn),
        percent('notGoRunsOn.sd', 'Give or take', notGoRunsOn.sd),
      ],
    },
    seen('By eye: fresh', 'grade.fresh', grade.fresh),
    seen('By eye: light wear', 'grade.light', grade.light),
    seen('By eye: marked wear', 'grade.marked', grade.marked),
    seen('By eye: at its limit', 'grade.at-limit', grade['at-limit']),
  ];
}
