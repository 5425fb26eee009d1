import { invariant } from '../../lib/invariant';
import type { Chance } from '../random';
import type { Act } from './act';
import type { Calendar } from './calendar';
import { firstOff } from './care-acts';
import {
  cut,
  type Deed,
  endOfEdge,
  giveBack,
  issue,
  move,
  newEdge,
  newEdgeUnproved,
  receive,
} from './crib-acts';
import type { PersonId } from './people';
import { REGRIND_TRIPS, SPOILT_TRIP } from './regrind-trips';

/** Cones that one edge is good for in the reference material, in the mean; spread 0.3 of it. */
const MEAN_CONES: Readonly<Record<string, number>> = {
  '1-4': 70,
  '3-8': 60,
  '9-16': 50,
  '3-4': 45,
  '1': 35,
};
const FACTOR: Readonly<Record<string, number>> = { '316-annealed': 0.8, '2507': 2.5, '625': 4, 'ti-2': 1.5 };
const EDGES_MAX = 3;
/** From this day on, a first-off after a regrind stands in the log by itself. */
const FIRST_OFF_SINCE = -60;

interface Blade {
  readonly id: string;
  edgeNo: number;
  /** Reference cones that are left in the edge; known to the story, not to the shop. */
  left: number;
  /** First offset at which it is back in the crib; null: scrapped. */
  freeFrom: number | null;
}

/** Cones to cut: what, when, by whom. */
export interface ConeWork {
  readonly connectionId: string;
  readonly materialId: string;
  readonly heat: string;
  readonly jobLineId: string;
  readonly fluidId?: string | null;
  readonly ends: number;
  readonly offset: number;
  readonly minutes: number;
  readonly tech: PersonId;
  readonly mark: string;
  /** Whether the blade is seen to go over the counter. */
  readonly seen: boolean;
}

/** Cones the story's ends and lets the blades wear as they do: an edge goes, comes back ground, and in the end is scrap. */
export class BladeBench {
  readonly acts: Act[] = [];
  readonly #calendar: Calendar;
  readonly #chance: Chance;
  readonly #blades = new Map<string, Blade[]>();

  constructor(calendar: Calendar, chance: Chance) {
    this.#calendar = calendar;
    this.#chance = chance;
  }

  /** Cuts the cones of one row of work, with as many blades as it takes. Rows must come in the order of their days. */
  cone(work: ConeWork): void {
    const factor = FACTOR[work.materialId] ?? 1;
    let ends = work.ends;
    for (let part = 0; ends > 0; part++) {
      const blade = this.#bladeFor(work);
      const able = Math.max(1, Math.floor(blade.left / factor));
      const now = Math.min(ends, able);
      ends -= now;
      blade.left -= now * factor;
      this.#cut(work, blade, now, part);
      if (blade.left < factor) this.#wearOut(work, blade, part);
    }
  }

  /** A blade for a connection that stands in the crib when the story has been told: the most used one. */
  inCrib(connectionId: string): string {
    const blade = this.#blades.get(connectionId)?.find(({ freeFrom }) => freeFrom !== null && freeFrom < 0);
    invariant(blade !== undefined, 'the story leaves a blade of every size that is wanted');
    return blade.id;
  }

  #cut(work: ConeWork, blade: Blade, ends: number, part: number): void {
    const { connectionId, materialId, heat, jobLineId, fluidId = null, offset, minutes, tech, seen } = work;
    const mark = `${work.mark} ${part}`;
    const at = minutes + part * 25;
    const row = { connectionId, materialId, heat, jobLineId, fluidId, ends, goodEnds: ends, rejects: [] };
    const deed = (after: number, by: PersonId) => ({
      atMs: this.#calendar.at(offset, at + after),
      by,
      toolId: blade.id,
      mark,
    });
    if (seen) this.acts.push(issue(deed(-20, 'crib-1'), tech, jobLineId, ''));
    this.acts.push(cut(deed(0, tech), row));
    if (seen)
      this.acts.push(giveBack(deed(10, 'crib-1'), blade.left < (FACTOR[materialId] ?? 1) ? 'dull' : 'ok'));
  }

  #bladeFor({ connectionId, offset }: ConeWork): Blade {
    const free = this.#blades
      .get(connectionId)
      ?.find(({ freeFrom }) => freeFrom !== null && freeFrom <= offset);
    return free ?? this.buy(connectionId, offset);
  }

  /** A new blade, in the crib three days before it is wanted. */
  buy(connectionId: string, offset: number): Blade {
    const all = this.#blades.get(connectionId) ?? [];
    this.#blades.set(connectionId, all);
    const id = `B-${bladeCode(connectionId)}-${String(all.length + 1).padStart(2, '0')}`;
    const blade: Blade = { id, edgeNo: 1, left: this.#newLife(connectionId, 1), freeFrom: offset };
    all.push(blade);
    const receivedOnDay = this.#calendar.day(offset - 3);
    this.acts.push(
      receive(
        { atMs: this.#calendar.at(offset - 3, 500), by: 'crib-1', toolId: id },
        { partId: `blade-${connectionId}`, receivedOnDay, lot: `BL-${40 + all.length}` },
      ),
    );
    return blade;
  }

  #wearOut({ connectionId, offset, minutes, mark }: ConeWork, blade: Blade, part: number): void {
    const atMs = this.#calendar.at(offset, minutes + part * 25 + 15);
    const deed = { atMs, by: 'crib-1' as const, toolId: blade.id, mark: `${mark} ${part}` };
    const trip = REGRIND_TRIPS.find(({ outOffset }) => outOffset > offset);
    blade.freeFrom = null;
    if (blade.edgeNo >= EDGES_MAX) {
      this.acts.push(
        endOfEdge({ ...deed, reason: 'No regrind left in it.' }, { cause: 'worn', to: 'scrapped' }),
      );
      return;
    }
    this.acts.push(endOfEdge({ ...deed, reason: 'Cuts rough.' }, { cause: 'worn', to: 'regrind' }));
    if (trip !== undefined) this.#regrind(connectionId, blade, trip);
  }

  #regrind(connectionId: string, blade: Blade, trip: (typeof REGRIND_TRIPS)[number]): void {
    const mark = `trip ${trip.outOffset}`;
    const backOnDay = this.#calendar.day(trip.backOffset);
    const out = {
      atMs: this.#calendar.at(trip.outOffset, 540),
      by: 'crib-2' as const,
      toolId: blade.id,
      mark,
    };
    this.acts.push(move({ ...out, reason: 'Out to Ashpenny Regrind.' }, { to: 'regrind', backOnDay }));
    if (trip.backOffset >= 0) return;
    const back = { ...out, atMs: this.#calendar.at(trip.backOffset, 430) };
    if (trip === SPOILT_TRIP) {
      const reason = 'First-off refused: edge blued by grinding, soft. Whole batch sent back for credit.';
      this.acts.push(move({ ...back, by: 'quality-1', reason }, { to: 'scrapped' }));
      return;
    }
    this.#back(connectionId, back, trip.backOffset);
    blade.edgeNo += 1;
    blade.left = this.#newLife(connectionId, blade.edgeNo);
    blade.freeFrom = trip.backOffset;
  }

  /** Back with a new edge; of late its first-off is written down apart, before the day's work. */
  #back(connectionId: string, deed: Deed & { readonly mark: string }, offset: number): void {
    const onDay = this.#calendar.day(offset);
    if (offset < FIRST_OFF_SINCE) {
      this.acts.push(newEdge(deed, onDay, connectionId));
      return;
    }
    const early = { ...deed, atMs: this.#calendar.at(offset, 405) };
    const gauged = { ...deed, atMs: this.#calendar.at(offset, 415), by: 'quality-1' as const };
    this.acts.push(
      newEdgeUnproved(early, onDay),
      firstOff(gauged, { connectionId, roles: ['cone-gauge'], onDay }),
    );
  }

  /** Life of an edge in reference cones; every regrind leaves nine tenths. */
  #newLife(connectionId: string, edgeNo: number): number {
    const size = connectionId.replace(/-(medium|high)$/, '');
    const mean = (MEAN_CONES[size] ?? 50) * 0.9 ** (edgeNo - 1);
    return Math.max(8, Math.round(this.#chance.normal(mean, 0.3 * mean)));
  }
}

/** Code of a blade's size in its ID: B-56H for 9/16 high pressure. */
function bladeCode(connectionId: string): string {
  const code = { '1-4': '25', '3-8': '38', '9-16': '56', '3-4': '75', '1': '100' }[
    connectionId.replace(/-(medium|high)$/, '')
  ];
  return `${code}${connectionId.endsWith('high') ? 'H' : ''}`;
}
