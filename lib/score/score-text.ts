import type { Coverage } from './band-coverage';
import type { Reliability, Score, Scorecard } from './scored-case';

/**
 * A scorecard as plain lines for a terminal: what came true of what was said, the scores of ours and of the fixed count on
 * the same cases, and how the bands did.
 */
export function scoreText(
  { ours, oursOnSame, fixedCount, voided, open }: Scorecard,
  bands?: Coverage,
): string[] {
  if (ours === undefined) return ['Nothing has been settled yet.'];
  return [
    `${ours.count} predictions settled, ${voided} void (taken out while good, lost, incident), ${open} still open.`,
    `It finished in ${percent(ours.baseRate)} of them.`,
    '',
    ...diagramText(ours.reliability),
    '',
    scoreLine('Ours', ours),
    ...(oursOnSame && fixedCount
      ? [
          scoreLine('Ours, cases with a fixed count', oursOnSame),
          scoreLine('Fixed count, the same cases', fixedCount),
        ]
      : ['The shop has no fixed count to compare with.']),
    ...(bands === undefined ? [] : ['', bandLine(bands)]),
  ];
}

function diagramText({ bins, calibrationError }: Reliability): string[] {
  return [
    'Said, on average   Came true   95 % of chance   Cases',
    ...bins.map(({ predicted, observed, low, high, count }) =>
      [
        percent(predicted).padStart(16),
        percent(observed).padStart(11),
        `${percent(low)} to ${percent(high)}`.padStart(16),
        String(count).padStart(7),
      ].join(' '),
    ),
    `Calibration error, five bins of equal width: ${calibrationError.toFixed(3)}`,
  ];
}

function scoreLine(name: string, { count, brier, skill }: Score): string {
  return `${name}: Brier ${brier.toFixed(4)}, skill over the base rate ${percent(skill)}, ${count} cases`;
}

function bandLine({ count, share, low, high, short, beyond }: Coverage): string {
  return (
    `Of ${count} bands of 10 to 90 % whose edge has worn out since, ${percent(share)} held (${percent(low)} to ` +
    `${percent(high)}); ${percent(short)} lasted less, ${percent(beyond)} more. Edges that still cut are missing from ` +
    'these, so they lean short.'
  );
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
