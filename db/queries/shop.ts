import { asc, eq } from 'drizzle-orm';
import type { Actor } from '../../lib/access/actor';
import { DEFAULT_GAUGE_SETTINGS } from '../../lib/gauge/default-gauge-settings';
import type { ReadingSettings } from '../../lib/reading/reading-settings';
import { type Costs, DEFAULT_COSTS } from '../../lib/shop/costs';
import type { GaugeSettings } from '../../lib/shop/gauge-settings';
import type { Person } from '../../lib/shop/noun';
import type { Shop } from '../../lib/shop/shop-settings';
import type { Db } from '../open';
import { gaugeSettings, person, readingSettings, shop, shopCosts } from '../schema';

/** The shop's own settings; undefined until it has been set up. */
export function findShop(db: Db): Shop | undefined {
  const row = db.select().from(shop).get();
  if (row === undefined) return undefined;
  const { id: _id, acceptanceRule, ...settings } = row;
  return acceptanceRule === null ? settings : { ...settings, acceptanceRule };
}

/** How the shop reads wear; undefined until it has said so. */
export function findReadingSettings(db: Db): ReadingSettings | undefined {
  return db.select().from(readingSettings).get()?.data;
}

/** How the shop judges its gauges; undefined until it has said so. */
export function findGaugeSettings(db: Db): GaugeSettings | undefined {
  return db.select().from(gaugeSettings).get()?.data;
}

/** The same, with what holds until then. */
export function gaugeSettingsInForce(db: Db): GaugeSettings {
  return findGaugeSettings(db) ?? DEFAULT_GAUGE_SETTINGS;
}

/** What things cost the shop; the first guesses until it has said so. */
export function findCosts(db: Db): Costs {
  return db.select().from(shopCosts).get()?.data ?? DEFAULT_COSTS;
}

/** Everyone whose name can be chosen, by role and name. */
export function listPeople(db: Db): Person[] {
  return db.select().from(person).orderBy(asc(person.role), asc(person.name)).all();
}

/** The person as an actor; undefined when nobody has that key. */
export function findActor(db: Db, personId: string): Actor | undefined {
  const row = db.select().from(person).where(eq(person.id, personId)).get();
  return row === undefined ? undefined : { personId: row.id, name: row.name, role: row.role };
}
