import { expect, it } from 'vitest';
import { lapseWarnings } from '@/lib/outlook/lapse-warnings';
import { lineFacts, shopRecord, TODAY, toolFacts } from '../../support/shop-record';

const ring = (id: string, dueOnDay: string, over = {}) =>
  toolFacts({ id, role: 'go-ring', dueOnDay, ...over });
/** Three days of threading from today, 2 to 4 March. */
const line = lineFacts({ startOnDay: TODAY, dueOnDay: '2026-03-04' });

function warningsOf(tools: ReturnType<typeof ring>[], lines = [line]) {
  return lapseWarnings(shopRecord({ tools, lines }));
}

// source: hand. Due on the 3rd it may accept on the 2nd and 3rd; the job runs to the 4th.
it('Q13: gauge due tomorrow, job runs three days: warned, with the twin that is in date', () => {
  expect(warningsOf([ring('G-1', '2026-03-03'), ring('G-2', '2027-01-01')])).toEqual([
    {
      ...{ toolId: 'G-1', usableToDay: '2026-03-03', lineId: 'J-1.1', lineDueOnDay: '2026-03-04' },
      twinIds: ['G-2'],
    },
  ]);
});

it('Q13: a twin that is away, of another hand, or due as well is none; then it is to be sent early', () => {
  const twins = [
    ring('G-2', '2027-01-01', { state: 'calibration' }),
    ring('G-3', '2027-01-01', { state: 'quarantined' }),
    ring('G-4', '2027-01-01', { hand: 'RH' }),
    ring('G-5', '2026-03-03'),
    ring('G-6', '2027-01-01', { state: 'issued', jobLineId: 'J-9.1' }),
  ];
  const [first] = warningsOf([ring('G-1', '2026-03-03'), ...twins]);
  expect(first).toMatchObject({ toolId: 'G-1', twinIds: [] });
});

it('due on the last day of the job is in time; a job that starts later or is done is none', () => {
  expect(warningsOf([ring('G-1', '2026-03-04')])).toEqual([]);
  expect(
    warningsOf(
      [ring('G-1', '2026-03-03')],
      [lineFacts({ startOnDay: '2026-03-05', dueOnDay: '2026-03-09' })],
    ),
  ).toEqual([]);
  const done = lineFacts({ startOnDay: TODAY, dueOnDay: '2026-03-04', goodCones: 24, goodThreads: 24 });
  expect(warningsOf([ring('G-1', '2026-03-03')], [done])).toEqual([]);
});

it('overdue, or with its ends used up, it cannot carry what runs now', () => {
  expect(warningsOf([ring('G-1', '2026-03-01')])).toMatchObject([{ usableToDay: '2026-03-01' }]);
  const facts = shopRecord({
    tools: [ring('G-1', '2027-01-01')],
    lines: [line],
    gaugeUse: [{ toolId: 'G-1', intervalEnds: 500, endsSince: 500 }],
  });
  expect(lapseWarnings(facts)).toMatchObject([{ toolId: 'G-1', usableToDay: '2026-03-01' }]);
});
