import type { Route } from 'next';
import Link from 'next/link';
import { whole } from '@/app/_shared/format';
import { EmptyState, Panel, Table, ToolId } from '@/app/_shared/ui';
import type { EdgeLife } from '@/lib/outlook/edge-lives';

const END: Record<EdgeLife['end'], string> = {
  worn: 'worn out',
  incident: 'lost to an accident',
  'removed-working': 'taken out good',
  'in-service': 'still cutting',
};

interface EdgeTableProps {
  readonly lives: readonly EdgeLife[];
  readonly noun: string;
  readonly connectionName: string;
}

/** The edges behind the curve, longest life first. */
export function EdgeTable({ lives, noun, connectionName }: EdgeTableProps) {
  const used = lives.filter(({ cutEnds }) => cutEnds > 0);
  return (
    <Panel title="The edges" aside={`${whole(used.length)} have cut something`}>
      <Table
        caption="Edges of this part, longest life first"
        rows={used}
        rowKey={({ toolId, edgeNo }) => `${toolId} ${edgeNo}`}
        empty={
          <EmptyState title="No edge of this part has cut anything yet">
            Its life is as first guessed.
          </EmptyState>
        }
        columns={[
          {
            key: 'tool',
            header: 'Tool',
            lead: true,
            cell: ({ toolId, edgeNo }) => (
              <>
                <Link href={`/tools/${encodeURIComponent(toolId)}` as Route} prefetch={false}>
                  <ToolId id={toolId} />
                </Link>
                {edgeNo > 1 ? <span className="quiet"> after regrind {edgeNo - 1}</span> : null}
              </>
            ),
          },
          { key: 'end', header: 'What became of it', cell: ({ end }) => END[end] },
          { key: 'cut', header: 'Ends cut', numeric: true, cell: ({ cutEnds }) => whole(cutEnds) },
          {
            key: 'age',
            header: `As ${noun} of ${connectionName}`,
            numeric: true,
            cell: ({ ageEnds, end }) => `${end === 'worn' ? '' : 'more than '}${whole(ageEnds)}`,
          },
        ]}
      />
    </Panel>
  );
}
