import type { Option } from '@/app/_shared/ui';
import { materialWords } from '@/app/_shared/words/material-words';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { connectionText, readConnectionKey } from '@/lib/shop/connection-text';
import type { LineDraft } from './job-draft';

/** The sizes in use and the materials to choose from, with those that the job's lines already name. */
export function jobOptions(
  facts: Pick<ShopFacts, 'connections' | 'materials'>,
  lines: readonly LineDraft[] = [],
): { connections: Option[]; materials: Option[] } {
  const named = new Set(lines.map(({ connectionId }) => connectionId));
  const connections = facts.connections
    .filter(({ id, inUse }) => inUse || named.has(id))
    .map((connection) => ({ value: connection.id, label: connectionText(connection) }));
  const materials = facts.materials.map((material) => ({
    value: material.id,
    label: materialWords(material),
  }));
  return {
    connections: withNamed(connections, lines, ({ connectionId }) => connectionId),
    materials: withNamed(materials, lines, ({ materialId }) => materialId),
  };
}

/** Keys that a line holds and no table does (imported as they stood) stay choosable, so that saving changes nothing. */
function withNamed(
  options: Option[],
  lines: readonly LineDraft[],
  keyOf: (line: LineDraft) => string,
): Option[] {
  const known = new Set(['', ...options.map(({ value }) => value)]);
  const extra = [...new Set(lines.map(keyOf))].filter((key) => !known.has(key));
  return [...options, ...extra.map((key) => ({ value: key, label: `${labelOf(key)} (no table row)` }))];
}

function labelOf(key: string): string {
  const size = readConnectionKey(key);
  return size === undefined ? key : connectionText(size);
}
