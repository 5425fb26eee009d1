import 'server-only';
import type { Names } from '@/app/_shared/words/entry-words';
import { materialWords } from '@/app/_shared/words/material-words';
import { shopDb } from '@/db/client';
import { listPeople } from '@/db/queries/shop';
import { listConnections, listMaterials } from '@/db/queries/tables';
import { connectionText, readConnectionKey } from '@/lib/shop/connection-text';

/** The names behind the keys that entries carry. A size without a table row is still named by its key. */
export function shopNames(): Names {
  const db = shopDb();
  const people = new Map(listPeople(db).map(({ id, name }) => [id, name]));
  const sizes = new Map(listConnections(db).map((connection) => [connection.id, connectionText(connection)]));
  const materials = new Map(listMaterials(db).map((material) => [material.id, materialWords(material)]));
  return {
    person: (id) => people.get(id) ?? id,
    connection: (id) => sizes.get(id) ?? sizeOfKey(id),
    material: (id) => materials.get(id) ?? id,
  };
}

function sizeOfKey(key: string): string {
  const size = readConnectionKey(key);
  return size === undefined ? key : connectionText(size);
}
