import type { Route } from 'next';
import Link from 'next/link';
import { dueText, inDays } from '@/app/_shared/format';
import { ButtonLink, EmptyState, LifeBand, Panel, StateMark, Table, ToolId } from '@/app/_shared/ui';
import type { ToolRow } from '@/db/queries/tools';
import type { Outlook } from '@/lib/outlook/outlook';
import { fluidExpiresOnDay } from '@/lib/outlook/plan-facts';
import { connectionText } from '@/lib/shop/connection-text';
import type { Part } from '@/lib/shop/part';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import type { ToolFilter } from './tool-filter';

const PAGE_ROWS = 60;
/** Ends at which the bands of the list end, so that they can be compared. */
const BAND_MAX_ENDS = 200;

interface ToolListProps {
  readonly tools: readonly ToolRow[];
  readonly filter: ToolFilter;
  readonly outlook: Outlook;
  readonly parts: ReadonlyMap<string, Part>;
}

/** The tools that the filter lets through, a page at a time. */
export function ToolList({ tools, filter, outlook, parts }: ToolListProps) {
  const from = (filter.page - 1) * PAGE_ROWS;
  const page = tools.slice(from, from + PAGE_ROWS);
  const { today } = outlook.facts;
  return (
    <Panel
      title="Tools"
      aside={`${tools.length === 0 ? 0 : from + 1} to ${from + page.length} of ${tools.length}`}
    >
      <Table
        caption="Tools"
        rows={page}
        rowKey={(tool) => tool.id}
        empty={<Nothing find={filter.find} />}
        columns={[
          {
            key: 'id',
            header: 'Tool',
            lead: true,
            cell: (tool) => (
              <Link href={`/tools/${encodeURIComponent(tool.id)}`} prefetch={false}>
                <ToolId id={tool.id} />
              </Link>
            ),
          },
          { key: 'kind', header: 'Kind', cell: (tool) => kindWords(tool, parts.get(tool.partId), outlook) },
          {
            key: 'stands',
            header: 'Stands',
            cell: (tool) => (
              <StateMark state={tool.state}>
                {tool.holderName === null ? undefined : `issued to ${tool.holderName}`}
              </StateMark>
            ),
          },
          {
            key: 'left',
            header: 'Left',
            cell: (tool) => <Left tool={tool} part={parts.get(tool.partId)} outlook={outlook} />,
          },
          { key: 'due', header: 'Dates', cell: (tool) => dates(tool, parts.get(tool.partId), today) },
        ]}
      />
      <Pages filter={filter} total={tools.length} />
    </Panel>
  );
}

function kindWords(tool: ToolRow, part: Part | undefined, outlook: Outlook): string {
  const fits = outlook.facts.connections.filter(({ id }) => part?.fitsConnectionIds.includes(id));
  const hand = tool.hand === null ? '' : `, ${tool.hand}`;
  const size =
    fits.length === 0 ? '' : fits.length > 3 ? ', several sizes' : `, ${fits.map(connectionText).join('; ')}`;
  return `${ROLE_LABEL[tool.role]}${hand}${size}`;
}

/** Ends left in the tool's own first size and the reference material. */
function Left({ tool, part, outlook }: { tool: ToolRow; part: Part | undefined; outlook: Outlook }) {
  if (tool.role === 'fluid') return tool.levelMl === null ? 'not read' : `${tool.levelMl} mL`;
  const connectionId = part?.fitsConnectionIds.find((id) =>
    outlook.facts.connections.some((known) => known.id === id),
  );
  const material = outlook.facts.materials.find(({ isReference }) => isReference);
  const forecast =
    connectionId && material
      ? outlook.forecast(tool.id, { connectionId, materialId: material.id })
      : undefined;
  if (forecast === undefined) return null;
  const { safeEnds, likelyEnds, highEnds } = forecast;
  return <LifeBand low={safeEnds} median={likelyEnds} high={highEnds} max={BAND_MAX_ENDS} />;
}

function dates(tool: ToolRow, part: Part | undefined, today: string): string | null {
  if (tool.backOnDay !== null) return `back ${inDays(tool.backOnDay, today)}`;
  if (tool.dueOnDay !== null) return `calibration ${dueText(tool.dueOnDay, today)}`;
  const expires = part === undefined || tool.role !== 'fluid' ? null : fluidExpiresOnDay(tool, part);
  return expires === null ? null : `use by ${inDays(expires, today)}`;
}

function Nothing({ find }: { find: string }) {
  return (
    <EmptyState
      title={find === '' ? 'No tool here' : `No tool ${find}`}
      action={
        <>
          <ButtonLink href="/tools/receive" tone="primary">
            Receive a tool
          </ButtonLink>
          <ButtonLink href="/import">Import a list</ButtonLink>
        </>
      }
    >
      {find === ''
        ? 'Nothing in the record matches. Receive a tool, import a list, or show all.'
        : 'Nothing in the record bears this ID or one that reads like it. Check the mark; or receive it, if it is new.'}
    </EmptyState>
  );
}

function Pages({ filter, total }: { filter: ToolFilter; total: number }) {
  const last = Math.ceil(total / PAGE_ROWS);
  if (last <= 1) return null;
  const to = (page: number): Route => {
    const { find, size, role, state } = filter;
    return `/tools?${new URLSearchParams({ find, size, kind: role, state, page: String(page) })}` as Route;
  };
  return (
    <nav className="cluster no-print" aria-label="Pages of the list">
      {filter.page > 1 ? <ButtonLink href={to(filter.page - 1)}>Earlier</ButtonLink> : null}
      {filter.page < last ? <ButtonLink href={to(filter.page + 1)}>Later</ButtonLink> : null}
    </nav>
  );
}
