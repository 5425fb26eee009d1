import { expect, it } from 'vitest';
import { type CourseEntry, growthPerEndMm, threadCourse } from '@/lib/reading/thread-course';

const cut = (ends: number): CourseEntry => ({ kind: 'cut-logged', payload: { ends } });
const read = (pitchDiameterMm: number, onDay = '2026-03-02'): CourseEntry => ({
  kind: 'edge-read',
  payload: {
    onDay,
    finding: { method: 'pitch-diameter', pitchDiameterMm, minMm: 8.712, maxMm: 8.809, instrument: 'wires' },
  },
});
const grade: CourseEntry = {
  kind: 'edge-read',
  payload: { onDay: '2026-03-03', finding: { method: 'grade', grade: 'light' } },
};
const adjusted: CourseEntry = {
  kind: 'die-adjusted',
  payload: { direction: 'closed', amount: 'a touch', onDay: '2026-03-04' },
};

// source: hand. 10, then 30 ends in all, read after each; the grade says nothing of a size; 12 more after the adjustment.
it('counts the ends at every reading and adjustment', () => {
  const course = threadCourse([cut(10), read(8.75), cut(20), read(8.77), grade, adjusted, cut(12)]);
  expect(course.readings.map(({ ends, pitchDiameterMm }) => [ends, pitchDiameterMm])).toEqual([
    [10, 8.75],
    [30, 8.77],
  ]);
  expect(course.adjustments).toEqual([{ ends: 30, onDay: '2026-03-04', direction: 'closed' }]);
  expect(course.ends).toBe(42);
});

// source: hand. Ends counted before the die was entered come first.
it('starts from what was cut before', () => {
  const opening = { known: 'counted', ends: 25 };
  expect(threadCourse([{ kind: 'tool-received', payload: { opening } }, cut(5)]).ends).toBe(30);
  expect(threadCourse([{ kind: 'tool-received', payload: { opening: { known: 'unknown' } } }]).ends).toBe(0);
});

// source: hand. 8.750, 8.760, 8.770 at 0, 10, 20 ends is 0.001 mm an end, exactly on a line.
it('finds the growth since the last adjustment, where there is enough to see one', () => {
  const line = [read(8.75), cut(10), read(8.76), cut(10), read(8.77)];
  expect(growthPerEndMm(threadCourse(line))).toBeCloseTo(0.001, 12);
  expect(growthPerEndMm(threadCourse(line.slice(0, 3)))).toBeUndefined();
  expect(growthPerEndMm(threadCourse([...line, adjusted, cut(4), read(8.73)]))).toBeUndefined();
  expect(growthPerEndMm(threadCourse([read(8.75), read(8.76), read(8.77)]))).toBeUndefined();
});
