'use client';
/**
 * <SurvivalBandChart title summary series={[{ x, y, lo, hi }]} xLabel yLabel yKind="share|number" need={{ x, label }} />
 * A band with its middle line. Takes a ready series and computes nothing. `summary` says in a sentence what the picture
 * shows; the figures stand in a table behind "Figures". Red, green and the like are not for charts: ink and steel.
 */
import {
  Area,
  CartesianGrid,
  ComposedChart,
  Line,
  ReferenceLine,
  ResponsiveContainer,
  XAxis,
  YAxis,
} from 'recharts';
import { percent, whole } from '../format';
import { Table } from '../ui/table';
import styles from './chart.module.css';

export interface BandPoint {
  readonly x: number;
  readonly y: number;
  readonly lo: number;
  readonly hi: number;
}

interface Props {
  readonly title: string;
  readonly summary: string;
  readonly series: readonly BandPoint[];
  readonly xLabel: string;
  readonly yLabel: string;
  readonly yKind?: 'share' | 'number';
  readonly need?: { readonly x: number; readonly label: string };
}

const AXIS = { stroke: 'var(--ink-3)', fontSize: 13, tickLine: false } as const;

export function SurvivalBandChart({ title, summary, series, xLabel, yLabel, yKind = 'share', need }: Props) {
  const data = series.map((point) => ({ x: point.x, y: point.y, band: [point.lo, point.hi] }));
  const tickY = (y: number) => (yKind === 'share' ? `${Math.round(y * 100)}%` : whole(y));
  return (
    <figure className={styles.chart}>
      <figcaption>
        <strong>{title}</strong>
        <span className={styles.summary}>{summary}</span>
      </figcaption>
      <p className={styles.axis}>{yLabel}</p>
      <div className={styles.plot} aria-hidden="true">
        <ResponsiveContainer width="100%" height="100%">
          <ComposedChart
            data={data}
            margin={{ top: 18, right: 14, bottom: 0, left: -12 }}
            accessibilityLayer={false}
          >
            <CartesianGrid stroke="var(--line)" strokeWidth={0.75} vertical={false} />
            <XAxis
              {...AXIS}
              dataKey="x"
              type="number"
              domain={['dataMin', 'dataMax']}
              tickFormatter={whole}
            />
            <YAxis
              {...AXIS}
              axisLine={false}
              domain={yKind === 'share' ? [0, 1] : ['auto', 'auto']}
              tickFormatter={tickY}
            />
            <Area
              dataKey="band"
              stroke="var(--line-strong)"
              strokeWidth={0.75}
              fill="var(--steel-pale)"
              fillOpacity={1}
              isAnimationActive={false}
            />
            <Line dataKey="y" stroke="var(--ink)" strokeWidth={2} dot={false} isAnimationActive={false} />
            {need ? (
              <ReferenceLine
                x={need.x}
                stroke="var(--ink)"
                strokeDasharray="10 3 2 3"
                label={{
                  value: need.label,
                  position: 'insideTopLeft',
                  offset: 6,
                  dy: -18,
                  fill: 'var(--ink)',
                  fontSize: 13,
                }}
              />
            ) : null}
          </ComposedChart>
        </ResponsiveContainer>
      </div>
      <p className={styles.axisAlong}>{xLabel}</p>
      <Figures title={title} series={series} xLabel={xLabel} yKind={yKind} />
    </figure>
  );
}

function Figures({ title, series, xLabel, yKind }: Pick<Props, 'title' | 'series' | 'xLabel' | 'yKind'>) {
  const show = (y: number) => (yKind === 'share' ? percent(y) : whole(y));
  return (
    <details className={`${styles.figures} no-print`}>
      <summary>Figures</summary>
      <Table
        caption={title}
        phone="scroll"
        rows={series}
        rowKey={(point) => String(point.x)}
        columns={[
          { key: 'x', header: xLabel, lead: true, numeric: true, cell: (point) => whole(point.x) },
          { key: 'y', header: 'middle', numeric: true, cell: (point) => show(point.y) },
          { key: 'lo', header: 'low', numeric: true, cell: (point) => show(point.lo) },
          { key: 'hi', header: 'high', numeric: true, cell: (point) => show(point.hi) },
        ]}
      />
    </details>
  );
}
