import type { CountScope, Drawer } from '../shop/stock-count';
import { toolKey } from '../shop/tool-id';
import { CALIBRATED_ROLES, EDGE_KINDS, type Role, type ToolState } from '../shop/vocabulary';

/** A tool as far as a stock-take cares. */
export interface CountedTool {
  readonly id: string;
  readonly role: Role;
  readonly state: ToolState;
  /** The sizes that it is for; only a count of one drawer asks. */
  readonly connectionIds?: readonly string[];
}

/** What a count shows against the record. */
export interface CountResult {
  /** What was scanned of ours, each once. */
  readonly scannedIds: readonly string[];
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
 * characters folded. Set differences; nothing is decided here. Of blades and dies, `drawer` narrows what is expected to
 * one size, one kind, or both; what lies in the crib outside it is no difference.
 */
export function stockVariances(
  tools: readonly CountedTool[],
  scope: CountScope,
  scanned: readonly string[],
  drawer: Drawer = {},
): CountResult {
  const byKey = new Map(tools.map((tool) => [toolKey(tool.id), tool]));
  const found = new Map<string, CountedTool>();
  const unknown = new Set<string>();
  for (const typed of scanned) {
    const tool = byKey.get(toolKey(typed));
    if (tool === undefined) unknown.add(typed.trim());
    else found.set(tool.id, tool);
  }
  const expected = tools.filter(
    (tool) => tool.state === 'in-crib' && isInScope(tool.role, scope) && isInDrawer(tool, drawer),
  );
  return {
    scannedIds: [...found.keys()],
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

/**
 * Whether a tool belongs to one drawer of blades and dies. A tool whose part names no size is in the drawer of none.
 * @example isInDrawer({ role: 'die', connectionIds: ['9-16-high'] }, { connectionId: '9-16-high', edgeKind: 'blade' }) // => false
 * @example isInDrawer({ role: 'die', connectionIds: ['9-16-high'] }, { connectionId: '9-16-high' }) // => true
 */
export function isInDrawer(
  { role, connectionIds = [] }: Pick<CountedTool, 'role' | 'connectionIds'>,
  { connectionId, edgeKind }: Drawer,
): boolean {
  if (edgeKind !== undefined && edgeKind !== role) return false;
  return connectionId === undefined || connectionIds.includes(connectionId);
}
