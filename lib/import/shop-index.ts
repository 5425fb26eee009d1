import { ok, type Refusal, type Result, refuse } from '../result';
import { connectionText } from '../shop/connection-text';
import type { Connection, Material, Person } from '../shop/noun';
import type { Part } from '../shop/part';
import { SERVICE_LABEL, type Service } from '../shop/vocabulary';
import { fractionAscii } from '../units/fraction-text';
import type { Rational } from '../units/rational';
import { quoteCell } from './cell-value';
import { foldWord } from './column';

/** The shop's tables, arranged for finding what a file names. */
export interface ShopIndex {
  readonly connections: readonly Connection[];
  readonly parts: ReadonlyMap<string, Part>;
  readonly connectionOf: ReadonlyMap<string, Connection>;
  readonly materialsNamed: ReadonlyMap<string, readonly Material[]>;
  readonly peopleNamed: ReadonlyMap<string, Person>;
}

/** Arranges the shop's tables. */
export function makeShopIndex(tables: {
  readonly connections: readonly Connection[];
  readonly materials: readonly Material[];
  readonly people: readonly Person[];
  readonly parts: readonly Part[];
}): ShopIndex {
  const materialsNamed = new Map<string, Material[]>();
  for (const material of tables.materials) {
    const { id, name, condition } = material;
    for (const word of new Set([id, name, `${name} ${condition}`, `${id} ${condition}`].map(foldWord))) {
      materialsNamed.set(word, [...(materialsNamed.get(word) ?? []), material]);
    }
  }
  const named = tables.people.flatMap((person) =>
    [person.id, person.name].map((name) => [foldWord(name), person] as const),
  );
  return {
    connections: tables.connections,
    parts: new Map(tables.parts.map((part) => [part.id, part])),
    connectionOf: new Map(
      tables.connections.map((c) => [sizeServiceKey({ num: c.odNum, den: c.odDen }, c.service), c]),
    ),
    materialsNamed,
    peopleNamed: new Map(named),
  };
}

/** The row of the shop's size table for a size and service; refused where there is none, never guessed. */
export function findConnection(
  index: ShopIndex,
  size: Rational,
  service: Service,
): Result<Connection, Refusal> {
  const found = index.connectionOf.get(sizeServiceKey(size, service));
  if (found !== undefined) return ok(found);
  const text = connectionText({ odNum: size.num, odDen: size.den, service });
  return refuse(
    'unknown-connection',
    `The shop has no table row for ${text}. Add the size under Set-up first.`,
    'size',
  );
}

/** A material by its key or its name, whatever its case and spaces; its key wins over another's name. */
export function findMaterial(index: ShopIndex, text: string, field = 'material'): Result<Material, Refusal> {
  const named = index.materialsNamed.get(text) ?? index.materialsNamed.get(foldWord(text)) ?? [];
  const [only, another] = named;
  if (only !== undefined && another === undefined) return ok(only);
  const word = foldWord(text);
  const found = named.find((material) => foldWord(material.id) === word);
  if (found !== undefined) return ok(found);
  if (only === undefined) {
    const sentence = `The shop knows no material ${quoteCell(text)}. Add it under Set-up first.`;
    return refuse('unknown-material', sentence, field);
  }
  const keys = named.map((material) => material.id).join(' or ');
  return refuse('materials', `${quoteCell(text)} is the name of several materials. Write ${keys}.`, field);
}

/** A size, with its service where one is named, in words for a sentence: "9/16 in high pressure". */
export function sizeServiceText(size: Rational | null, service: Service | null): string {
  const words = [size && `${fractionAscii(size)} in`, service && SERVICE_LABEL[service]];
  return words.filter((word) => word !== null).join(' ');
}

function sizeServiceKey(size: Rational, service: Service): string {
  return `${size.num}/${size.den} ${service}`;
}
