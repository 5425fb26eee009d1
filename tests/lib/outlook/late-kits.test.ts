import { expect, it } from 'vitest';
import { lateKits } from '@/lib/outlook/late-kits';

const today = '2026-11-25';
const lines = [
  { id: 'J-1.1', dueOnDay: '2026-11-24' },
  { id: 'J-2.1', dueOnDay: '2026-11-25' },
  { id: 'J-3.1', dueOnDay: '2026-11-20' },
];
const kit = (id: string, jobLineId: string, missingToolIds: readonly string[] = []) => ({
  ...{ id, jobLineId, missingToolIds },
});

// source: hand. A line is in time to the end of its due day, so the kit of J-2.1 is not late on that day.
it('leaves a kit alone to the end of the day on which its line is due', () => {
  expect(lateKits([kit('b', 'J-2.1')], { lines, today })).toEqual([]);
  expect(lateKits([kit('b', 'J-2.1')], { lines, today: '2026-11-26' }).map(({ kitId }) => kitId)).toEqual([
    'b',
  ]);
});

// source: hand. Missing first; then a job that has left the plan; then due on the 20th, then on the 24th.
it('puts what is searched for first, then the longest overdue', () => {
  const kits = [
    kit('a', 'J-1.1'),
    kit('c', 'J-3.1'),
    kit('gone', 'J-9.1'),
    kit('short', 'J-2.1', ['GDE-56-1']),
  ];
  const late = lateKits(kits, { lines, today });
  expect(late.map(({ kitId }) => kitId)).toEqual(['short', 'gone', 'c', 'a']);
  expect(late.map(({ dueOnDay }) => dueOnDay)).toEqual(['2026-11-25', null, '2026-11-20', '2026-11-24']);
});
