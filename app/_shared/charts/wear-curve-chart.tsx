'use client';
/**
 * <WearCurveChart title summary model={[{ ends, low, median, high }]} log={[{ ends, share }]} endsLabel="threads of …" />
 * Share of edges still cutting against ends: the model's band with its middle line, and the shop's own edges as steps.
 * Takes ready series and computes nothing. The figures stand in tables behind "Figures".
 */
import { Area, CartesianGrid, ComposedChart, Line, Scatter, XAxis, YAxis } from 'recharts';
import { percent, share, whole } from '../format';
import { Table } from '../ui/table';
import { AXIS, BAND, ChartFrame, DASHED, GRID } from './chart-frame';

interface ModelPoint {
  readonly ends: number;
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** The shop's own edges: the share that lasted beyond so many ends, and how many were still being followed. */
interface LogStep {
  readonly ends: number;
  readonly share: number;
  readonly atRisk: number;
  readonly worn: number;
}

interface Props {
  readonly title: string;
  readonly summary: string;
  readonly model: readonly ModelPoint[];
  readonly log: readonly LogStep[];
  readonly endsLabel: string;
}

const MOST_TICKS = 7;

export function WearCurveChart({ title, summary, model, log, endsLabel }: Props) {
  const band = model.map(({ ends, median, low, high }) => ({ ends, median, band: [low, high] }));
  const steps = log.length === 0 ? [] : [{ ends: 0, share: 1 }, ...log];
  const far = model.at(-1)?.ends ?? 1;
  const every = Math.ceil(model.length / MOST_TICKS);
  const ticks = model.filter((_, at) => at % every === 0).map(({ ends }) => ends);
  return (
    <ChartFrame
      title={title}
      summary={summary}
      up="Share still cutting"
      along={endsLabel}
      keys={[
        { mark: 'solid', words: 'your own edges' },
        { mark: 'dashed', words: 'as estimated' },
        { mark: 'band', words: 'how well that is known, four times in five' },
      ]}
      figures={<Figures {...{ title, model, log, endsLabel }} />}
    >
      <ComposedChart margin={{ top: 18, right: 14, bottom: 0, left: -12 }} accessibilityLayer={false}>
        <CartesianGrid {...GRID} vertical={false} />
        <XAxis {...AXIS} dataKey="ends" type="number" domain={[0, far]} ticks={ticks} tickFormatter={whole} />
        <YAxis {...AXIS} axisLine={false} domain={[0, 1]} tickFormatter={(y) => `${Math.round(y * 100)}%`} />
        <Area data={band} dataKey="band" {...BAND} />
        <Line
          data={band}
          dataKey="median"
          stroke="var(--ink-3)"
          strokeWidth={2}
          {...DASHED}
          dot={false}
          isAnimationActive={false}
        />
        <Line
          data={steps}
          dataKey="share"
          type="stepAfter"
          stroke="var(--ink)"
          strokeWidth={2}
          dot={false}
          isAnimationActive={false}
        />
        <Scatter data={[...log]} dataKey="share" fill="var(--ink)" isAnimationActive={false} />
      </ComposedChart>
    </ChartFrame>
  );
}

function Figures({ title, model, log, endsLabel }: Omit<Props, 'summary'>) {
  return (
    <>
      <Table
        caption={`${title}, as estimated`}
        captionShown
        phone="scroll"
        rows={model}
        rowKey={({ ends }) => String(ends)}
        columns={[
          { key: 'ends', header: endsLabel, lead: true, numeric: true, cell: ({ ends }) => whole(ends) },
          { key: 'mid', header: 'still cutting', numeric: true, cell: ({ median }) => percent(median) },
          { key: 'low', header: 'low', numeric: true, cell: ({ low }) => percent(low) },
          { key: 'high', header: 'high', numeric: true, cell: ({ high }) => percent(high) },
        ]}
      />
      <Table
        caption="Your own edges"
        captionShown
        phone="scroll"
        rows={log}
        rowKey={({ ends }) => String(ends)}
        empty={<p>No edge of this part has worn out yet.</p>}
        columns={[
          { key: 'ends', header: endsLabel, lead: true, numeric: true, cell: ({ ends }) => whole(ends) },
          { key: 'worn', header: 'worn out here', numeric: true, cell: ({ worn }) => worn },
          { key: 'risk', header: 'of so many', numeric: true, cell: ({ atRisk }) => atRisk },
          { key: 'left', header: 'still cutting', numeric: true, cell: (row) => share(row.share, 1) },
        ]}
      />
    </>
  );
}
