import type { ToolRow } from '@/db/queries/tools';
import { CODE_KINDS, type CodeKind } from '@/lib/labels/code-kind';
import { findStock, LABEL_STOCKS, type LabelStock, labelsPerPage } from '@/lib/labels/label-stock';
import { tidyToolId, toolKey } from '@/lib/shop/tool-id';
import { ROLES, type Role } from '@/lib/shop/vocabulary';

type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** So many labels at most at one time: ten full sheets of the largest stock. */
export const LABELS_MOST = 240;

/** What is to be printed, as it stands in the address. */
export interface LabelQuestion {
  readonly stock: LabelStock;
  readonly codeKind: CodeKind;
  /** First free place of a sheet that was begun; 1 on a fresh one. */
  readonly firstPlace: number;
  /** Kind of tools whose list is shown to tick from; empty for none. */
  readonly role: Role | '';
  /** IDs as they would be marked, each once, in the order in which they were scanned or ticked. */
  readonly ids: readonly string[];
}

/** Reads the question; what makes no sense falls back to a die tag with a Data Matrix on a fresh sheet. */
export function labelQuestion(asked: Asked): LabelQuestion {
  const word = (name: string) => (typeof asked[name] === 'string' ? asked[name] : '');
  const stock = findStock(word('stock')) ?? (LABEL_STOCKS[0] as LabelStock);
  const first = Number(word('first'));
  const onSheet = Number.isInteger(first) && first >= 1 && first <= labelsPerPage(stock);
  const ticked = asked.id === undefined ? [] : [asked.id].flat();
  const typed = word('ids').split(/[\s,;]*[\n\r,;]+[\s,;]*/);
  return {
    stock,
    codeKind: CODE_KINDS.find((kind) => kind === word('code')) ?? 'data-matrix',
    firstPlace: onSheet ? first : 1,
    role: ROLES.find((role) => role === word('kind')) ?? '',
    ids: eachOnce([...typed, ...ticked].map(tidyToolId).filter((id) => id !== '')).slice(0, LABELS_MOST),
  };
}

/** The tools that are meant, and the IDs that no tool bears. Look-alike letters count as one. */
export function labelledTools(
  ids: readonly string[],
  tools: readonly ToolRow[],
): { readonly found: readonly ToolRow[]; readonly unknown: readonly string[] } {
  const byKey = new Map(tools.map((tool) => [tool.lookUpKey, tool]));
  const found = ids.flatMap((id) => byKey.get(toolKey(id)) ?? []);
  return { found, unknown: ids.filter((id) => !byKey.has(toolKey(id))) };
}

function eachOnce(ids: readonly string[]): string[] {
  return [...new Map(ids.map((id) => [toolKey(id), id])).values()];
}
