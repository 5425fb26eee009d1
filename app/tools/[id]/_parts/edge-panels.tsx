import { shopDb } from '@/db/client';
import { findTool, type ToolRow } from '@/db/queries/tools';
import { isEdgeKind } from '@/lib/outlook/edge-histories';
import type { Outlook } from '@/lib/outlook/outlook';
import type { Part } from '@/lib/shop/part';
import { AskForm } from './ask-form';
import type { CutInHand } from './cut-in-hand';
import { LogPanel } from './log-panel';
import { notNow } from './not-now';
import { ReadingPanel } from './reading-panel';
import { VerdictPanel } from './verdict-panel';

interface EdgePanelsProps {
  readonly outlook: Outlook;
  readonly tool: ToolRow;
  readonly part: Part;
  readonly cut: CutInHand | undefined;
  /** How sure safe ends are to be, where it was asked for. */
  readonly sure?: number | undefined;
}

/** The work in hand with an edge still in service: what it has left, and logging what it cuts. */
export function WorkPanels({ outlook, tool, part, cut, sure }: EdgePanelsProps) {
  const edge = edgeInService(outlook, tool.id);
  if (edge === undefined || cut === undefined) return null;
  // By the record of this very moment too: a die that just broke does not say go until new figures are there.
  const barred = notNow(tool) ?? notNow(findTool(shopDb(), tool.id) ?? tool);
  return (
    <>
      <VerdictPanel outlook={outlook} toolId={tool.id} cut={cut} sure={sure} barred={barred} />
      <LogPanel outlook={outlook} tool={tool} part={part} cut={cut} />
    </>
  );
}

/** What else can be asked and said of an edge still in service: other work, and how it looks. */
export function AsidePanels({ outlook, tool, part, cut }: EdgePanelsProps) {
  const edge = edgeInService(outlook, tool.id);
  if (edge === undefined || !isEdgeKind(tool.role)) return null;
  return (
    <>
      <ReadingPanel outlook={outlook} toolId={tool.id} role={tool.role} edge={edge} />
      {cut ? <AskForm outlook={outlook} toolId={tool.id} part={part} cut={cut} /> : null}
    </>
  );
}

function edgeInService(outlook: Outlook, toolId: string) {
  const last = outlook.facts.edges.findLast((edge) => edge.toolId === toolId);
  return last?.end === null ? last : undefined;
}
