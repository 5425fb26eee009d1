import { asc, eq } from 'drizzle-orm';
import type { Belief } from '../../lib/shop/belief';
import type { Connection, LifeGuess, Material } from '../../lib/shop/noun';
import type { Part } from '../../lib/shop/part';
import type { Db } from '../open';
import { connection, lifeBelief, lifeGuess, material, part, partFit, partPermit } from '../schema';

/** The sizes in the shop's table, small to large, medium before high. */
export function listConnections(db: Db): Connection[] {
  const rows = db.select().from(connection).all();
  const order = (c: Connection) => c.odNum / c.odDen + (c.service === 'high' ? 1e-6 : 0);
  return rows.sort((a, b) => order(a) - order(b));
}

/** One row of the size table. */
export function findConnection(db: Db, id: string): Connection | undefined {
  return db.select().from(connection).where(eq(connection.id, id)).get();
}

/** The tube materials, the reference first. */
export function listMaterials(db: Db): Material[] {
  const rows = db.select().from(material).orderBy(asc(material.factor), asc(material.name)).all();
  return rows.sort((a, b) => Number(b.isReference) - Number(a.isReference));
}

/** The parts the shop knows, each with what it fits and what it is permitted on. */
export function listParts(db: Db): Part[] {
  const fits = grouped(db.select().from(partFit).all(), (row) => row.partId);
  const permits = grouped(db.select().from(partPermit).all(), (row) => row.partId);
  const rows = db.select().from(part).orderBy(asc(part.role), asc(part.name)).all();
  return rows.map(({ permitsAllMaterials, ...row }) => ({
    ...row,
    fitsConnectionIds: (fits.get(row.id) ?? []).map((fit) => fit.connectionId).sort(),
    permittedMaterialIds: permitsAllMaterials
      ? 'all'
      : (permits.get(row.id) ?? []).map((p) => p.materialId).sort(),
  }));
}

/** The first-guess lives typed on the first day, by part. */
export function listLifeGuesses(db: Db): LifeGuess[] {
  return db.select().from(lifeGuess).orderBy(asc(lifeGuess.partId)).all();
}

/** What the shop believes of each kind of edge before the log speaks, where it has said so. */
export function listBeliefs(db: Db): Belief[] {
  return db
    .select()
    .from(lifeBelief)
    .orderBy(asc(lifeBelief.kind))
    .all()
    .map((row) => row.data);
}

function grouped<T>(rows: readonly T[], keyOf: (row: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group === undefined) groups.set(keyOf(row), [row]);
    else group.push(row);
  }
  return groups;
}
