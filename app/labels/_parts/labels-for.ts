import type { Db } from '@/db/open';
import { listConnections, listParts } from '@/db/queries/tables';
import { listTools, type ToolRow } from '@/db/queries/tools';
import { labelLines } from '@/lib/labels/label-lines';
import { type LabelQuestion, labelledTools } from './label-question';
import type { Label } from './label-sheets';

/** The labels that are asked for, the IDs that no tool bears, and the tools of the kind that is listed to tick from. */
export function labelsFor(
  db: Db,
  question: LabelQuestion,
): {
  readonly labels: readonly Label[];
  readonly unknown: readonly string[];
  readonly listed: readonly ToolRow[];
} {
  const tools = listTools(db);
  const { found, unknown } = labelledTools(question.ids, tools);
  const parts = new Map(listParts(db).map((part) => [part.id, part]));
  const connections = listConnections(db);
  const labels = found.map((tool) => {
    const part = parts.get(tool.partId) ?? { fitsConnectionIds: [], designation: '' };
    return { id: tool.id, lines: labelLines(tool, part, connections) };
  });
  const isHere = ({ role, state }: ToolRow) =>
    role === question.role && state !== 'scrapped' && state !== 'lost';
  return { labels, unknown, listed: tools.filter(isHere) };
}
