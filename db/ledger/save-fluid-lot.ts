import type { Database } from 'better-sqlite3';
import type { FluidLot } from '../../lib/shop/fluid-lot';
import { upsert } from './statements';

/** What is known of one lot of a fluid. */
export function saveFluidLot(client: Database, id: string, lot: FluidLot): void {
  upsert(client, 'fluid_lot', 'id', { id, part_id: lot.partId, lot: lot.lot, data: JSON.stringify(lot) });
}
