import type { CountedTool } from '../../lib/kit/stock-variances';
import type { Db } from '../open';
import { listParts } from './tables';
import { listTools, type ToolRow } from './tools';

/** Every tool as a stock-take sees it: with the sizes that its part is for. */
export function listCountedTools(db: Db): (ToolRow & Required<CountedTool>)[] {
  const sizes = new Map(listParts(db).map(({ id, fitsConnectionIds }) => [id, fitsConnectionIds]));
  return listTools(db).map((tool) => ({ ...tool, connectionIds: sizes.get(tool.partId) ?? [] }));
}
