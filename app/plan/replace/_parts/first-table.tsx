import Link from 'next/link';
import { Table, ToolId } from '@/app/_shared/ui';
import { bandText, beforeText, moreText, whenText } from '@/app/_shared/words/replace-words';
import { sizeTextOf } from '@/app/plan/_parts/plan-rows';
import type { PartReplacement } from '@/lib/replacement/part-replacement';
import type { ToolPlan } from '@/lib/replacement/tool-plan';

interface FirstTableProps {
  readonly caption: string;
  readonly tools: readonly ToolPlan[];
  readonly parts: readonly PartReplacement[];
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
}

/** Edges in the order in which they are to be changed. */
export function FirstTable({ caption, tools, parts, today, lineLabel }: FirstTableProps) {
  const partOf = new Map(parts.map((found) => [found.part.id, found]));
  return (
    <Table
      caption={caption}
      rows={tools}
      rowKey={({ toolId }) => toolId}
      columns={[
        {
          key: 'tool',
          header: 'Tool',
          lead: true,
          cell: ({ toolId }) => (
            <Link href={`/tools/${encodeURIComponent(toolId)}`} prefetch={false}>
              <ToolId id={toolId} />
            </Link>
          ),
        },
        {
          key: 'more',
          header: 'Before it is changed',
          cell: (plan) => {
            const found = partOf.get(plan.partId);
            const unit = found === undefined ? '' : unitOf(found);
            return (
              <>
                {moreText(plan)}
                <br />
                <span className="fine">{plan.moreEnds === null || plan.moreEnds === 0 ? '' : unit}</span>
              </>
            );
          },
        },
        {
          key: 'when',
          header: 'When',
          cell: (plan) => (
            <>
              {whenText(plan, today)}
              <br />
              <span className="fine">{bandText(plan, today)}</span>
              {plan.startKnown ? null : (
                <>
                  <br />
                  <span className="fine">too hopeful: nobody knows what it had cut before</span>
                </>
              )}
            </>
          ),
        },
        { key: 'before', header: 'In mid-job', cell: beforeText },
        {
          key: 'lines',
          header: 'Meant for',
          cell: ({ lineIds, value }) =>
            lineIds.length === 0
              ? 'no line yet'
              : `${lineIds.map(lineLabel).join(', ')}${value === 'precious' ? '; cannot be remade' : ''}`,
        },
      ]}
    />
  );
}

function unitOf({ kind, connection }: PartReplacement): string {
  return `${kind === 'die' ? 'threads' : 'cones'} of ${sizeTextOf([connection], connection.id)}`;
}
