import type { CountScope } from '../shop/stock-count';
import { toolKey } from '../shop/tool-id';
import { CALIBRATED_ROLES, EDGE_KINDS, type Role, type ToolState } from '../shop/vocabulary';

/** A tool as far as a stock-take cares. */
export interface CountedTool {
  readonly id: string;
  readonly role: Role;
  readonly state: ToolState;
}

/** What a count shows against the record. */
export interface CountResult {
  readonly expectedIds: readonly string[];
  readonly foundIds: readonly string[];
  /** In the crib by the record, not found. */
  readonly missingIds: readonly string[];
  /** Found, though the record says that it is elsewhere. */
  readonly unexpectedIds: readonly string[];
  /** Scanned, and no tool of ours. */
  readonly unknown: readonly string[];
}

/**
 * Compares what was scanned in the crib with what the record expects there: both ways, each tool once, look-alike
 * characters folded. Set differences; nothing is decided here.
 */
export function stockVariances(
  tools: readonly CountedTool[],
  scope: CountScope,
  scanned: readonly string[],
): CountResult {
  const byKey = new Map(tools.map((tool) => [toolKey(tool.id), tool]));
  const found = new Map<string, CountedTool>();
  const unknown = new Set<string>();
  for (const typed of scanned) {
    const tool = byKey.get(toolKey(typed));
    if (tool === undefined) unknown.add(typed.trim());
    else found.set(tool.id, tool);
  }
  const expected = tools.filter((tool) => tool.state === 'in-crib' && isInScope(tool.role, scope));
  return {
    expectedIds: expected.map(({ id }) => id),
    foundIds: expected.flatMap(({ id }) => (found.has(id) ? [id] : [])),
    missingIds: expected.flatMap(({ id }) => (found.has(id) ? [] : [id])),
    unexpectedIds: [...found.values()].flatMap(({ id, state }) => (state === 'in-crib' ? [] : [id])),
    unknown: [...unknown],
  };
}

/**
 * Whether a stock-take of a scope goes through tools of a role.
 * @example isInScope('die', 'gauges') // => false
 */
export function isInScope(role: Role, scope: CountScope): boolean {
  if (scope === 'everything') return true;
  if (scope === 'fluids') return role === 'fluid';
  if (scope === 'gauges') return CALIBRATED_ROLES.includes(role);
  return EDGE_KINDS.some((kind) => kind === role);
}
