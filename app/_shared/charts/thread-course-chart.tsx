'use client';
/**
 * <ThreadCourseChart title summary unit min max points={[{ ends, size, onDay }]} marks={[{ ends, words }]} ends />
 * The pitch diameter of a die's last threads against its limits, over the ends it has cut; upright lines where it was adjusted.
 * Takes ready series in the unit of the screen and computes nothing. The figures stand in a table behind "Figures".
 */
import { CartesianGrid, ComposedChart, Line, ReferenceArea, ReferenceLine, XAxis, YAxis } from 'recharts';
import { whole } from '../format';
import { Table } from '../ui/table';
import { AXIS, ChartFrame, GRID } from './chart-frame';

interface Point {
  /** Told apart by this: two readings may fall on one count of ends and one day. */
  readonly key: string;
  readonly ends: number;
  readonly size: number;
  readonly sizeText: string;
  readonly leftText: string;
  readonly day: string;
}

interface Props {
  readonly title: string;
  readonly summary: string;
  readonly unit: 'in' | 'mm';
  readonly min: number;
  readonly max: number;
  readonly points: readonly Point[];
  readonly marks: readonly { readonly key: string; readonly ends: number; readonly words: string }[];
  /** Ends cut by now: the right-hand edge. */
  readonly ends: number;
}

export function ThreadCourseChart({ title, summary, unit, min, max, points, marks, ends }: Props) {
  const sizes = [min, max, ...points.map(({ size }) => size)];
  const room = (max - min) * 0.25;
  const domain = [Math.min(...sizes) - room, Math.max(...sizes) + room];
  const figure = (size: number) => size.toFixed(unit === 'in' ? 4 : 3);
  return (
    <ChartFrame
      title={title}
      summary={summary}
      up={`Pitch diameter, ${unit}`}
      along="ends cut by the die"
      keys={[
        { mark: 'band', words: 'between the limits' },
        ...(marks.length > 0 ? [{ mark: 'dashed', words: 'adjusted' } as const] : []),
      ]}
      figures={<Figures {...{ title, points, marks }} />}
    >
      <ComposedChart
        data={[...points]}
        margin={{ top: 18, right: 14, bottom: 0, left: 4 }}
        accessibilityLayer={false}
      >
        <CartesianGrid {...GRID} vertical={false} />
        <XAxis {...AXIS} dataKey="ends" type="number" domain={[0, Math.max(1, ends)]} tickFormatter={whole} />
        <YAxis
          {...AXIS}
          axisLine={false}
          domain={domain}
          ticks={[min, (min + max) / 2, max]}
          tickFormatter={figure}
        />
        <ReferenceArea y1={min} y2={max} fill="var(--steel-pale)" fillOpacity={0.55} />
        <ReferenceLine y={max} stroke="var(--ink)" strokeWidth={1.5} />
        <ReferenceLine y={min} stroke="var(--ink)" strokeWidth={1.5} />
        {marks.map((mark) => (
          <ReferenceLine key={mark.key} x={mark.ends} stroke="var(--ink-2)" strokeDasharray="3 3" />
        ))}
        <Line
          dataKey="size"
          stroke="var(--ink)"
          strokeWidth={2}
          dot={{ r: 4, fill: 'var(--sheet)', stroke: 'var(--ink)', strokeWidth: 2 }}
          isAnimationActive={false}
        />
      </ComposedChart>
    </ChartFrame>
  );
}

function Figures({ title, points, marks }: Pick<Props, 'title' | 'points' | 'marks'>) {
  return (
    <>
      <Table
        caption={title}
        captionShown
        phone="scroll"
        rows={points}
        rowKey={({ key }) => key}
        columns={[
          {
            key: 'ends',
            header: 'ends cut',
            lead: true,
            numeric: true,
            cell: (point) => whole(point.ends),
          },
          { key: 'day', header: 'read on', cell: ({ day }) => day },
          { key: 'size', header: 'pitch diameter', numeric: true, cell: ({ sizeText }) => sizeText },
          { key: 'left', header: 'to the upper limit', numeric: true, cell: ({ leftText }) => leftText },
        ]}
      />
      {marks.length > 0 ? (
        <ul>
          {marks.map(({ key, ends: at, words }) => (
            <li key={key}>
              after {whole(at)} ends: {words}
            </li>
          ))}
        </ul>
      ) : null}
    </>
  );
}
