import { endsWithUnit } from '@/app/_shared/format';
import { Panel, Table, VerdictMark } from '@/app/_shared/ui';
import { sizeTextOf } from '@/app/plan/_parts/plan-rows';
import type { SizeStatus } from '@/lib/capability/size-status';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import type { movedSizes } from '@/lib/what-if/moved-lines';

interface SizeMovesProps {
  readonly moved: ReturnType<typeof movedSizes>;
  readonly facts: ShopFacts;
}

/** What the crib could make today, size by size, where the change moves it. */
export function SizeMoves({ moved, facts }: SizeMovesProps) {
  if (moved.length === 0) return null;
  return (
    <Panel title="Sizes, before and after">
      <Table
        caption="Sizes whose answer or ends in hand move, asked for one end today"
        rows={moved}
        rowKey={({ connectionId }) => connectionId}
        columns={[
          {
            key: 'size',
            header: 'Size',
            lead: true,
            cell: ({ connectionId }) => sizeTextOf(facts.connections, connectionId),
          },
          { key: 'before', header: 'As it stands', cell: ({ before }) => <SizeAnswer status={before} /> },
          { key: 'after', header: 'If it were so', cell: ({ after }) => <SizeAnswer status={after} /> },
        ]}
      />
    </Panel>
  );
}

function SizeAnswer({ status }: { readonly status: SizeStatus }) {
  return (
    <div className="stack-tight">
      <VerdictMark verdict={status.verdict} />
      {status.likelyEnds === null ? null : (
        <span className="quiet">{endsWithUnit(status.likelyEnds)} likely in the edges here</span>
      )}
    </div>
  );
}
