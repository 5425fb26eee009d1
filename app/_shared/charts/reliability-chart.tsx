'use client';
/**
 * <ReliabilityChart title summary bins={[{ predicted, observed, low, high, count }]} />
 * What was said against what happened: a mark for each group of cases with its interval and its count, and the diagonal on
 * which a fair forecaster stands. Takes ready bins and computes nothing. The figures stand beside it in a table of the page.
 */
import {
  CartesianGrid,
  ComposedChart,
  ErrorBar,
  LabelList,
  ReferenceLine,
  Scatter,
  XAxis,
  YAxis,
} from 'recharts';
import { AXIS, ChartFrame, DASHED, GRID } from './chart-frame';

interface Bin {
  readonly predicted: number;
  readonly observed: number;
  readonly low: number;
  readonly high: number;
  readonly count: number;
}

interface Props {
  readonly title: string;
  readonly summary: string;
  readonly bins: readonly Bin[];
}

const AXES = {
  ...AXIS,
  type: 'number',
  domain: [0, 1],
  ticks: [0, 0.2, 0.4, 0.6, 0.8, 1],
  tickFormatter: (share: number) => `${Math.round(share * 100)}%`,
} as const;

export function ReliabilityChart({ title, summary, bins }: Props) {
  const data = bins.map((bin) => ({ ...bin, error: [bin.observed - bin.low, bin.high - bin.observed] }));
  return (
    <ChartFrame
      title={title}
      summary={summary}
      shape="square"
      up="Share that finished"
      along="Chance that was said"
      keys={[
        {
          mark: 'mark',
          words: 'what happened, with the number of cases; the bar holds nineteen times in twenty',
        },
        { mark: 'dashed', words: 'as it was said' },
      ]}
    >
      <ComposedChart
        data={data}
        margin={{ top: 12, right: 18, bottom: 0, left: -12 }}
        accessibilityLayer={false}
      >
        <CartesianGrid {...GRID} />
        <XAxis {...AXES} dataKey="predicted" />
        <YAxis {...AXES} axisLine={false} />
        <ReferenceLine
          segment={[
            { x: 0, y: 0 },
            { x: 1, y: 1 },
          ]}
          stroke="var(--ink-3)"
          {...DASHED}
        />
        <Scatter dataKey="observed" fill="var(--ink)" isAnimationActive={false}>
          <ErrorBar
            dataKey="error"
            direction="y"
            width={6}
            stroke="var(--ink)"
            strokeWidth={1.5}
            isAnimationActive={false}
          />
          <LabelList dataKey="count" position="right" offset={10} fill="var(--ink-2)" fontSize={13} />
        </Scatter>
      </ComposedChart>
    </ChartFrame>
  );
}
