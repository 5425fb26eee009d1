import { sizeTextOf } from '@/app/plan/_parts/plan-rows';
import type { LineFacts, ShopFacts } from '@/lib/outlook/shop-facts';

const TRIED_TOOL = /~what-if-\d+-\d+ (\S+)/g;

/** A line that a question brings in has no number yet. */
export function lineWords(lineId: string, lines: readonly LineFacts[]): string {
  if (lineId.startsWith('~')) return 'the new job';
  const line = lines.find(({ id }) => id === lineId);
  if (line === undefined) return `line ${lineId}`;
  const alone = lines.filter(({ jobId }) => jobId === line.jobId).length < 2;
  return alone ? `job ${line.jobId}` : `line ${lineId}`;
}

/** Pieces that a question brings in are called by their part: "a new die-3-8". */
export function plainTools(sentence: string): string {
  return sentence.replace(TRIED_TOOL, 'a new $1');
}

/** "24 ends, 3⁄8 in medium pressure". */
export function sizeOfLine(
  line: LineFacts | undefined,
  { connections }: Pick<ShopFacts, 'connections'>,
): string {
  return line === undefined ? '' : sizeTextOf(connections, line.connectionId);
}
