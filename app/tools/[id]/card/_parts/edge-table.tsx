import { count, dayText, exposureText, listWords, momentText, whole } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui';
import type { EdgeCard } from '@/lib/outlook/tool-card';
import { type EdgeKind, END_CAUSES } from '@/lib/shop/vocabulary';
import { fromMicro } from '@/lib/units/micro';

interface EdgeTableProps {
  readonly kind: EdgeKind;
  readonly edges: readonly EdgeCard[];
  readonly timeZone: string;
}

/** One row for each edge: what it cut, how it was looked after, and why it ended. */
export function EdgeTable({ kind, edges, timeZone }: EdgeTableProps) {
  const day = (ms: number) => momentText(ms, timeZone).replace(/,[^,]*$/, '');
  return (
    <Table
      caption="Edges, in order"
      rows={edges}
      rowKey={({ edgeNo }) => String(edgeNo)}
      columns={[
        {
          key: 'edge',
          header: 'Edge',
          lead: true,
          cell: ({ edgeNo }) => (edgeNo === 1 ? 'first' : `after regrind ${edgeNo - 1}`),
        },
        {
          key: 'span',
          header: 'Cut from, to',
          cell: ({ firstCutAtMs, lastCutAtMs }) =>
            firstCutAtMs === null || lastCutAtMs === null
              ? 'nothing cut'
              : `${day(firstCutAtMs)} to ${day(lastCutAtMs)}`,
        },
        { key: 'ends', header: 'Ends', numeric: true, cell: ({ ends }) => whole(ends) },
        { key: 'good', header: 'Good', numeric: true, cell: ({ goodEnds }) => whole(goodEnds) },
        {
          key: 'wear',
          header: kind === 'die' ? 'Turns' : 'Metal',
          numeric: true,
          cell: ({ exposureMicro }) => exposureText(kind, fromMicro(exposureMicro)),
        },
        {
          key: 'jobs',
          header: 'Job lines',
          numeric: true,
          cell: ({ jobLineIds }) => whole(jobLineIds.length),
        },
        { key: 'care', header: 'Looked after', cell: careWords },
        {
          key: 'ended',
          header: 'Ended',
          cell: ({ ended }) =>
            ended === null ? 'in service' : `${causeWords(ended.cause)}, ${day(ended.atMs)}`,
        },
      ]}
    />
  );
}

function careWords({ timesIssued, readings, adjustments, firstOffs }: EdgeCard): string {
  const failed = firstOffs.filter((result) => result === 'fail').length;
  const passed = firstOffs.length - failed;
  const said = [
    timesIssued > 0 ? `issued ${count(timesIssued, 'time')}` : '',
    readings > 0 ? count(readings, 'reading') : '',
    ...adjustments.map(({ direction, onDay }) => `${direction} a touch ${dayText(onDay)}`),
    passed > 0 ? `first-off passed${passed > 1 ? ` ${count(passed, 'time')}` : ''}` : '',
    failed > 0 ? `first-off failed${failed > 1 ? ` ${count(failed, 'time')}` : ''}` : '',
  ].filter((words) => words !== '');
  return said.length === 0 ? 'nothing on record' : listWords(said);
}

function causeWords(cause: string): string {
  return END_CAUSES.find(({ code }) => code === cause)?.label ?? cause;
}
