import type { Drawer } from '@/lib/shop/stock-count';
import { EDGE_KINDS } from '@/lib/shop/vocabulary';
import type { Names } from './entry-words';

const KINDS = { blade: 'blades', die: 'dies' } as const;

/** What a count of blades and dies was narrowed to: "9⁄16 high pressure dies", "dies"; empty where it was not. */
export function drawerWords({ connectionId, edgeKind }: Drawer, names: Pick<Names, 'connection'>): string {
  const kinds = edgeKind === undefined ? EDGE_KINDS : [edgeKind];
  if (connectionId === undefined) return edgeKind === undefined ? '' : KINDS[edgeKind];
  return `${names.connection(connectionId)} ${kinds.map((kind) => KINDS[kind]).join(' and ')}`;
}
