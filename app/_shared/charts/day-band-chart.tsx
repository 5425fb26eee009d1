'use client';
/**
 * <DayBandChart title summary rows={[{ label, lowDays, midDays, highDays }]} ticks={[{ days, label }]} />
 * When things are due, as bands along the days from today: the line is the 10–90 % band, the dot the middle. A band that is
 * open to the right ends at the edge. Takes ready figures and computes nothing; the page gives them in a table.
 */
import { Bar, CartesianGrid, ComposedChart, Scatter, XAxis, YAxis } from 'recharts';
import { AXIS, BAND, ChartFrame, GRID } from './chart-frame';

interface BandRow {
  readonly label: string;
  readonly lowDays: number;
  /** Null where it lies beyond the axis. */
  readonly midDays: number | null;
  readonly highDays: number;
}

interface Props {
  readonly title: string;
  readonly summary: string;
  readonly rows: readonly BandRow[];
  readonly ticks: readonly { readonly days: number; readonly label: string }[];
}

const ROW_PX = 30;

export function DayBandChart({ title, summary, rows, ticks }: Props) {
  const last = ticks.at(-1)?.days ?? 1;
  const labels = new Map(ticks.map(({ days, label }) => [days, label]));
  const data = rows.map(({ label, lowDays, midDays, highDays }) => ({
    label,
    band: [Math.min(lowDays, last), Math.min(Math.max(highDays, lowDays + 0.5), last)],
    mid: midDays,
  }));
  return (
    <ChartFrame
      title={title}
      summary={summary}
      shape={{ heightPx: rows.length * ROW_PX + 40 }}
      keys={[
        { mark: 'mark', words: 'as likely before as after' },
        { mark: 'band', words: 'four times in five within' },
      ]}
    >
      <ComposedChart
        layout="vertical"
        data={data}
        margin={{ top: 4, right: 24, bottom: 0, left: 8 }}
        accessibilityLayer={false}
      >
        <CartesianGrid {...GRID} horizontal={false} />
        <XAxis
          {...AXIS}
          type="number"
          domain={[0, last]}
          ticks={ticks.map(({ days }) => days)}
          tickFormatter={(days: number) => labels.get(days) ?? ''}
        />
        <YAxis {...AXIS} type="category" dataKey="label" width={76} axisLine={false} interval={0} />
        <Bar dataKey="band" barSize={12} {...BAND} />
        <Scatter dataKey="mid" fill="var(--ink)" isAnimationActive={false} />
      </ComposedChart>
    </ChartFrame>
  );
}
