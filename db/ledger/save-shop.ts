import type { Database } from 'better-sqlite3';
import type { ReadingSettings } from '../../lib/reading/reading-settings';
import type { Belief } from '../../lib/shop/belief';
import type { Costs } from '../../lib/shop/costs';
import type { GaugeSettings } from '../../lib/shop/gauge-settings';
import type { Connection, LifeGuess, Material, Person } from '../../lib/shop/noun';
import type { Part } from '../../lib/shop/part';
import type { Shop } from '../../lib/shop/shop-settings';
import { bit, clear, insert, upsert } from './statements';

export function saveShop(client: Database, id: string, shop: Shop): void {
  upsert(client, 'shop', 'id', {
    id,
    name: shop.name,
    units: shop.units,
    currency: shop.currency,
    required_probability: shop.requiredProbability,
    required_probability_precious: shop.requiredProbabilityPrecious,
    fluid_waste_factor: shop.fluidWasteFactor,
    acceptance_rule: shop.acceptanceRule === undefined ? null : JSON.stringify(shop.acceptanceRule),
  });
}

export function savePerson(client: Database, id: string, person: Person): void {
  upsert(client, 'person', 'id', { id, name: person.name, role: person.role });
}

export function saveConnection(client: Database, id: string, connection: Connection): void {
  upsert(client, 'connection', 'id', {
    id,
    od_num: connection.odNum,
    od_den: connection.odDen,
    service: connection.service,
    tpi: connection.tpi,
    hand: connection.hand,
    thread_class: connection.threadClass,
    thread_length_mm: connection.threadLengthMm,
    cone_angle_deg: connection.coneAngleDeg,
    nose_mm: connection.noseMm,
    not_go_turns_max: connection.notGoTurnsMax,
    confirmed: bit(connection.confirmed),
    in_use: bit(connection.inUse),
  });
}

export function saveMaterial(client: Database, id: string, material: Material): void {
  upsert(client, 'material', 'id', {
    id,
    name: material.name,
    condition: material.condition,
    factor: material.factor,
    factor_give_or_take: material.factorGiveOrTake,
    is_reference: bit(material.isReference),
  });
}

export function savePart(client: Database, id: string, part: Part): void {
  clear(client, 'part_fit', 'part_id', id);
  clear(client, 'part_permit', 'part_id', id);
  const { permittedMaterialIds: permitted } = part;
  upsert(client, 'part', 'id', {
    id,
    role: part.role,
    name: part.name,
    designation: part.designation,
    hand: part.hand,
    adjustable: bit(part.adjustable),
    matched_pair: bit(part.matchedPair),
    regrind_limit: part.regrindLimit,
    supplier: part.supplier,
    price_minor: part.priceMinor,
    lead_time_days: part.leadTimeDays,
    permits_all_materials: bit(permitted === 'all'),
    chlorinated: part.chlorinated,
    opened_life_days: part.openedLifeDays,
    drops_per_ml: part.dropsPerMl,
    container_ml: part.containerMl ?? null,
    pack_size: part.packSize ?? null,
    min_quantity: part.minQuantity ?? null,
    break_kind: part.breakKind ?? null,
    price_breaks: jsonOrNull(part.priceBreaks),
    offers: jsonOrNull(part.offers),
    shelf_life_days: part.shelfLifeDays ?? null,
    permitted_duties: JSON.stringify(part.permittedDuties ?? ['ordinary']),
  });
  for (const connectionId of new Set(part.fitsConnectionIds)) {
    insert(client, 'part_fit', { part_id: id, connection_id: connectionId });
  }
  for (const materialId of new Set(permitted === 'all' ? [] : permitted)) {
    insert(client, 'part_permit', { part_id: id, material_id: materialId });
  }
}

function jsonOrNull(value: unknown): string | null {
  return value === null || value === undefined ? null : JSON.stringify(value);
}

export function saveGuess(client: Database, id: string, guess: LifeGuess): void {
  upsert(client, 'life_guess', 'part_id', {
    part_id: id,
    connection_id: guess.connectionId,
    ends: guess.ends,
    give_or_take: guess.giveOrTake,
  });
}

export function saveBelief(client: Database, kind: string, belief: Belief): void {
  upsert(client, 'life_belief', 'kind', { kind, data: JSON.stringify(belief) });
}

export function saveReadingSettings(client: Database, id: string, settings: ReadingSettings): void {
  upsert(client, 'reading_settings', 'id', { id, data: JSON.stringify(settings) });
}

export function saveGaugeSettings(client: Database, id: string, settings: GaugeSettings): void {
  upsert(client, 'gauge_settings', 'id', { id, data: JSON.stringify(settings) });
}

export function saveCosts(client: Database, id: string, costs: Costs): void {
  upsert(client, 'shop_costs', 'id', { id, data: JSON.stringify(costs) });
}
