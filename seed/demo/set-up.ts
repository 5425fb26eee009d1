import { type Noun, setNoun } from '../../db/commands/set-noun';
import { type Actor, SET_UP } from '../../lib/access/actor';
import { completeSetParts } from '../../lib/shipped/complete-set-parts';
import { SHIPPED_CONNECTIONS } from '../../lib/shipped/connections';
import { firstGuesses } from '../../lib/shipped/first-guesses';
import { SHIPPED_MATERIALS, TITANIUM_ID } from '../../lib/shipped/materials';
import { DEFAULT_COSTS } from '../../lib/shop/costs';
import type { LifeGuess } from '../../lib/shop/noun';
import type { Part } from '../../lib/shop/part';
import { CALIBRATED_ROLES, type Role } from '../../lib/shop/vocabulary';
import { type Act, act } from './act';
import { type Calendar, monthDay } from './calendar';
import { actorOf, PEOPLE, TECH_5_JOINS_MONTH } from './people';

/** The day on which the invented shop begins to keep its record, days from today. */
export const SET_UP_OFFSET = monthDay(18, 0) - 14;

/** The threading oil that the shop keeps for titanium. */
export const CHLORINE_FREE_FLUID = 'fluid-chlorine-free';

/** The water-based fluid that the cleaning plan for oxygen service allows. */
export const OXYGEN_FLUID = 'fluid-oxygen';

/** The shop's tables, set on its first day; the newest technician and what titanium taught come later. */
export function setUpActs(calendar: Calendar): Act[] {
  const firstDay: Noun[] = [
    {
      noun: 'shop',
      value: {
        name: 'Tidewrack Deep Rig Workshop',
        units: 'in',
        currency: 'USD',
        requiredProbability: 0.9,
        requiredProbabilityPrecious: 0.95,
        fluidWasteFactor: 3,
        acceptanceRule: {
          notGoTurnsMax: 2,
          whose: 'shop instruction 7',
          exposedThreadsMin: 1,
          exposedThreadsMax: 2,
        },
      },
    },
    { noun: 'costs', value: { ...DEFAULT_COSTS, calibrationMinor: 8_500 } },
    {
      noun: 'gauge-settings',
      value: {
        decisionRule: 'guarded-95',
        targetReliability: 0.95,
        why: 'Shop instruction 12: a certificate proves to 95 %, and 19 of 20 gauges come back in.',
      },
    },
    ...PEOPLE.filter(({ id }) => id !== 'tech-5').map((value): Noun => ({ noun: 'person', value })),
    ...SHIPPED_CONNECTIONS.map((value): Noun => ({ noun: 'connection', value })),
    ...SHIPPED_MATERIALS.map((value): Noun => ({ noun: 'material', value })),
    ...demoParts().map((value): Noun => ({ noun: 'part', value })),
    ...demoGuesses().map((value): Noun => ({ noun: 'guess', value })),
  ];
  const atMs = calendar.at(SET_UP_OFFSET, 480);
  return [
    ...firstDay.map((noun) => set(noun, { atMs, by: SET_UP })),
    ...PEOPLE.filter(({ id }) => id === 'tech-5').map((value) =>
      set(
        { noun: 'person', value },
        { atMs: calendar.at(monthDay(TECH_5_JOINS_MONTH, 0), 480), by: actorOf('lead-1') },
      ),
    ),
    ...afterTitanium(calendar),
  ];
}

/** Month 16 galled a die on titanium; since then the usual oil is kept off it, and an oil for it is bought. */
function afterTitanium(calendar: Calendar): Act[] {
  const usual = demoParts().find(({ id }) => id === 'fluid');
  const value: Part[] = usual === undefined ? [] : [{ ...usual, ...USUAL_AFTER }];
  const atMs = calendar.at(monthDay(16, 29), 900);
  const reason = 'The sheet says chlorinated: not on titanium.';
  return value.map((part) =>
    set({ noun: 'part', value: part }, { atMs, by: actorOf('lead-1'), reason, mark: 'again' }),
  );
}

function set(noun: Noun, when: { atMs: number; by: Actor; reason?: string; mark?: string }): Act {
  const key = keyOf(noun);
  return act(
    { ...when, name: `set ${noun.noun} ${key} ${when.mark ?? ''}` },
    'set-up-shop',
    (db, permit, entered, env) => {
      const { entryId: id, deviceAtMs, reason } = entered;
      return setNoun(db, permit, { ...noun, envelope: { id, deviceAtMs, reason } }, env);
    },
  );
}

function keyOf(noun: Noun): string {
  if (noun.noun === 'shop' || noun.noun === 'costs') return noun.noun;
  if (noun.noun === 'reading-settings' || noun.noun === 'gauge-settings') return noun.noun;
  if (noun.noun === 'belief') return noun.value.kind;
  return noun.noun === 'guess' ? noun.value.partId : noun.value.id;
}

const USUAL_AFTER: Pick<Part, 'permittedMaterialIds' | 'chlorinated'> = {
  permittedMaterialIds: SHIPPED_MATERIALS.filter(({ id }) => id !== TITANIUM_ID).map(({ id }) => id),
  chlorinated: 'yes',
};

/** The parts of complete sets for every size, each once, with the invented suppliers; two oils, the usual one in 5 L cans. */
function demoParts(): Part[] {
  const parts = new Map<string, Part>();
  for (const connection of SHIPPED_CONNECTIONS) {
    for (const part of completeSetParts(connection))
      parts.set(part.id, { ...part, supplier: supplierOf(part.role), ...saleOf(part) });
  }
  const micrometer = parts.get('micrometer');
  if (micrometer !== undefined) {
    const wires = { name: 'Thread wires', designation: 'set of best-size wires, 28 to 14 TPI' };
    const seat = { name: 'Master seat', designation: 'master seat, 60 deg, for blue checks' };
    parts.set('thread-wires', { ...micrometer, ...wires, id: 'thread-wires', role: 'thread-wires' });
    parts.set('master-seat', { ...micrometer, ...seat, id: 'master-seat', role: 'master-seat' });
  }
  const oil = parts.get('fluid');
  if (oil !== undefined) {
    const can = {
      ...{ designation: 'neat threading oil, 5 L', priceMinor: 13_750, containerMl: 5000 },
      shelfLifeDays: 1095,
    };
    parts.set(oil.id, { ...oil, ...can, name: 'Usual threading oil', permittedMaterialIds: 'all' });
    const plain = {
      name: 'Chlorine-free threading oil',
      designation: 'chlorine-free threading oil, 1 L',
      priceMinor: 4_000,
    };
    parts.set(CHLORINE_FREE_FLUID, {
      ...oil,
      ...plain,
      id: CHLORINE_FREE_FLUID,
      chlorinated: 'no',
      permittedMaterialIds: 'all',
    });
    parts.set(OXYGEN_FLUID, {
      ...oil,
      ...{ id: OXYGEN_FLUID, name: 'Water-based fluid for oxygen service' },
      ...{ designation: 'water-based cutting fluid, cleaned off without residue, 500 mL', priceMinor: 5_200 },
      ...{ containerMl: 500, openedLifeDays: 365, shelfLifeDays: 730, dropsPerMl: 22 },
      ...{ chlorinated: 'no', permittedMaterialIds: 'all', permittedDuties: ['oxygen'] },
    });
  }
  return [...parts.values()];
}

/** How dies and blades are sold: dies cheaper by the four, two of them elsewhere too, sooner and dearer; blades in pairs. */
function saleOf({ id, role, priceMinor }: Part): Partial<Part> {
  if (priceMinor === null) return {};
  const share = (of: number) => Math.round((priceMinor * of) / 100);
  if (role === 'blade')
    return { packSize: 2, minQuantity: 2, priceBreaks: [{ fromQuantity: 6, priceMinor: share(90) }] };
  if (role !== 'die') return {};
  const priceBreaks = [{ fromQuantity: 4, priceMinor: share(92) }];
  if (!SOLD_ELSEWHERE.includes(id)) return { priceBreaks };
  const plain = { packSize: 1, minQuantity: 1, breakKind: 'all-units' as const, priceBreaks: [] };
  const second = { supplier: 'Cobblewick Threadworks', priceMinor: share(125), leadTimeDays: 12 };
  return { priceBreaks, offers: [{ ...second, ...plain }] };
}

/** Dies that a second supplier sells. */
const SOLD_ELSEWHERE: readonly string[] = ['die-3-8', 'die-9-16'];

function supplierOf(role: Role): string {
  if (role === 'fluid') return 'Marrowfen Fluids';
  return CALIBRATED_ROLES.includes(role) ? 'Quill and Tamber Gauge Room' : 'Ninefold Dies';
}

/** One first guess a part: a die that cuts both services is guessed in medium pressure threads. */
function demoGuesses(): LifeGuess[] {
  const guesses = new Map<string, LifeGuess>();
  for (const guess of SHIPPED_CONNECTIONS.flatMap(firstGuesses)) {
    if (!guesses.has(guess.partId)) guesses.set(guess.partId, guess);
  }
  return [...guesses.values()];
}
