'use client';
/**
 * <StockChart title summary endsLabel points={[{ day, low, mid, high, withOrder }]} />
 * A fan of stock over the weeks: the middle, the band of four futures in five, and the middle with the proposed order.
 * Takes ready series and computes nothing. The figures stand in a table behind "Figures".
 */
import { Area, CartesianGrid, ComposedChart, Line, ReferenceLine, XAxis, YAxis } from 'recharts';
import { AXIS, BAND, ChartFrame, DASHED, GRID } from '@/app/_shared/charts/chart-frame';
import { dayText, whole } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui/table';

interface StockPoint {
  readonly day: string;
  readonly low: number;
  readonly mid: number;
  readonly high: number;
  readonly withOrder: number | null;
}

interface StockChartProps {
  readonly title: string;
  readonly summary: string;
  readonly endsLabel: string;
  readonly points: readonly StockPoint[];
}

export function StockChart({ title, summary, endsLabel, points }: StockChartProps) {
  const rows = points.map((point) => ({ ...point, band: [point.low, point.high] }));
  const hasOrder = points.some(({ withOrder }) => withOrder !== null);
  return (
    <ChartFrame
      title={title}
      summary={summary}
      keys={[
        { mark: 'solid', words: 'middle of the futures' },
        ...(hasOrder ? [{ mark: 'dashed', words: 'with the proposed order placed today' } as const] : []),
        { mark: 'band', words: 'four times in five' },
      ]}
      figures={<Figures {...{ title, points, endsLabel }} />}
    >
      <ComposedChart
        data={rows}
        margin={{ top: 12, right: 14, bottom: 0, left: 0 }}
        accessibilityLayer={false}
      >
        <CartesianGrid {...GRID} vertical={false} />
        <XAxis {...AXIS} dataKey="day" tickFormatter={(day) => dayText(String(day))} minTickGap={28} />
        <YAxis {...AXIS} axisLine={false} tickFormatter={(value) => whole(Number(value))} width={48} />
        <ReferenceLine y={0} stroke="var(--ink)" strokeWidth={1.5} />
        <Area dataKey="band" {...BAND} />
        <Line dataKey="mid" stroke="var(--ink)" strokeWidth={2} dot={false} isAnimationActive={false} />
        {hasOrder ? (
          <Line
            dataKey="withOrder"
            stroke="var(--ink-3)"
            strokeWidth={2}
            {...DASHED}
            dot={false}
            isAnimationActive={false}
          />
        ) : null}
      </ComposedChart>
    </ChartFrame>
  );
}

function Figures({ title, points, endsLabel }: Omit<StockChartProps, 'summary'>) {
  return (
    <Table
      caption={`${title}, by week`}
      captionShown
      phone="scroll"
      rows={points}
      rowKey={({ day }) => day}
      columns={[
        { key: 'day', header: 'On', lead: true, cell: ({ day }) => dayText(day) },
        { key: 'low', header: 'low', numeric: true, cell: ({ low }) => floored(low) },
        { key: 'mid', header: endsLabel, numeric: true, cell: ({ mid }) => floored(mid) },
        { key: 'high', header: 'high', numeric: true, cell: ({ high }) => floored(high) },
        {
          key: 'with',
          header: 'with the order',
          numeric: true,
          cell: ({ withOrder }) => (withOrder === null ? 'none' : floored(withOrder)),
        },
      ]}
    />
  );
}

function floored(value: number): string {
  return whole(Math.floor(value));
}
