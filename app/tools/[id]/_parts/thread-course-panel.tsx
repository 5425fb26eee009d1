import { ThreadCourseChart } from '@/app/_shared/charts/thread-course-chart';
import { count, dayText, type LengthUnit, measureText } from '@/app/_shared/format';
import { marginSentence } from '@/app/_shared/thread/margin-words';
import { Panel } from '@/app/_shared/ui';
import type { Db } from '@/db/open';
import { listEntriesAbout } from '@/db/queries/entries';
import { growthPerEndMm, type ThreadCourse, threadCourse } from '@/lib/reading/thread-course';
import { pitchMargin } from '@/lib/thread/pitch-margin';
import { mmToIn } from '@/lib/units/inch-mm';

/** No die is written about more often in its life. */
const ENTRIES_MOST = 10_000;

interface Props {
  readonly db: Db;
  readonly tool: { readonly id: string; readonly role: string };
  readonly unit: LengthUnit;
  readonly today: string;
}

/** The thread that a die cuts, measured over its life, against its limits. Nothing where it was never measured. */
export function ThreadCoursePanel({ db, tool, unit, today }: Props) {
  if (tool.role !== 'die') return null;
  const entries = listEntriesAbout(db, { kind: 'tool', id: tool.id, limit: ENTRIES_MOST })
    .filter(({ reversedById, reversesId }) => reversedById === null && reversesId === null)
    .reverse();
  const course = threadCourse(entries);
  const last = course.readings.at(-1);
  if (last === undefined) return null;
  const inUnit = (mm: number) => (unit === 'in' ? mmToIn(mm) : mm);
  return (
    <Panel title="The thread it cuts" id="thread">
      <ThreadCourseChart
        title={`Pitch diameter of the last thread, ${tool.id}`}
        summary={summary(course, unit)}
        unit={unit}
        min={inUnit(last.minMm)}
        max={inUnit(last.maxMm)}
        ends={course.ends}
        points={course.readings.map((reading, at) => ({
          key: String(at),
          ends: reading.ends,
          size: inUnit(reading.pitchDiameterMm),
          sizeText: measureText(reading.pitchDiameterMm, unit),
          leftText: measureText(pitchMargin(reading).toMaxMm, unit),
          day: dayText(reading.onDay, today),
        }))}
        marks={course.adjustments.map(({ ends, direction, onDay }, at) => ({
          key: String(at),
          ends,
          words: `${direction} a touch, ${dayText(onDay, today)}. Its life is not reset by it.`,
        }))}
      />
    </Panel>
  );
}

function summary(course: ThreadCourse, unit: LengthUnit): string {
  const last = course.readings.at(-1);
  if (last === undefined) return '';
  const growth = growthPerEndMm(course);
  const grown =
    growth === undefined || growth <= 0
      ? ''
      : ` It has grown by about ${measureText(growth * 10, unit)} every 10 ends.`;
  const since = count(course.ends - last.ends, 'end');
  const when = course.ends > last.ends ? ` Cut since that reading: ${since}.` : '';
  return `${marginSentence(pitchMargin(last), unit)}${grown}${when}`;
}
