import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { nowMs, timeZone } from '@/app/_server/clock';
import { shopNames } from '@/app/_server/names';
import { shopFacts } from '@/app/_server/outlook';
import { EmptyState, Panel } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { listEntriesAbout } from '@/db/queries/entries';
import { findToolLog } from '@/db/queries/tool-logs';
import { findTool } from '@/db/queries/tools';
import { isEdgeKind } from '@/lib/outlook/edge-histories';
import { toolCard } from '@/lib/outlook/tool-card';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import styles from './_parts/card.module.css';
import { CardHead } from './_parts/card-head';
import { EdgeTable } from './_parts/edge-table';
import { EventList } from './_parts/event-list';
import { SaidTable } from './_parts/said-table';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/tools/[id]/card'>): Promise<Metadata> {
  return { title: `History of ${decodeURIComponent((await params).id)}` };
}

const ENTRIES_MOST = 10_000;

/** One tool's whole life on one sheet of paper: per edge, what was said of it and how that turned out, and what befell it. */
export default async function ToolCardPage({ params }: PageProps<'/tools/[id]/card'>) {
  const db = shopDb();
  const tool = findTool(db, decodeURIComponent((await params).id));
  const log = tool && findToolLog(db, tool.id);
  const facts = shopFacts();
  const part = facts.parts.find(({ id }) => id === tool?.partId);
  if (tool === undefined || log === undefined || part === undefined) notFound();
  const edges = isEdgeKind(tool.role) ? toolCard(log, facts.guesses) : [];
  const { regrindMinor } = facts.costs ?? DEFAULT_COSTS;
  const money = { currency: facts.shop?.currency ?? 'USD', regrindMinor };
  const entries = listEntriesAbout(db, { kind: 'tool', id: tool.id, limit: ENTRIES_MOST });
  const said = edges.flatMap(({ predictions }) => predictions);
  return (
    <div className={`page ${styles.card}`}>
      <CardHead {...{ tool, part, edges, money }} nowMs={nowMs()} timeZone={timeZone()} />
      {isEdgeKind(tool.role) ? (
        <Panel title="Edges" aside="a regrind counts from zero; the total is kept">
          <EdgeTable kind={tool.role} edges={edges} timeZone={timeZone()} />
        </Panel>
      ) : null}
      {said.length > 0 ? (
        <Panel title="What was said of it, and how it turned out">
          <SaidTable said={said} timeZone={timeZone()} />
        </Panel>
      ) : null}
      <Panel title="What befell it" aside="rows of the cut log left out; they stand in the sums above">
        <EventList
          entries={entries}
          names={shopNames()}
          timeZone={timeZone()}
          empty={<EmptyState title="Nothing yet">What is done with it will stand here.</EmptyState>}
        />
      </Panel>
    </div>
  );
}
