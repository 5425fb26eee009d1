import type { GaugeEvidence } from '../gauge/evidence';
import type { Finding } from '../reading/reading';
import type { FluidDisposed } from '../shop/fluid-entry';
import type { GaugeInterval } from '../shop/gauge-entry';
import type { Opening } from '../shop/noun';
import type { EdgeEnd, EndCause, Hand, Role, ToolState } from '../shop/vocabulary';

/** What one edge has done in one material under one set of conditions. Sums are exact integers. */
export interface EdgeUse {
  readonly connectionId: string;
  readonly materialId: string;
  readonly dry: boolean;
  readonly rework: boolean;
  readonly ends: number;
  readonly goodEnds: number;
  /** Millionths of a turn (die) or mm³ (blade), before any material factor. */
  readonly exposureMicro: number;
}

/** One edge of a tool: a die has one for life, a blade a new one after every regrind. */
export interface EdgeRecord {
  readonly edgeNo: number;
  /** How it ended; null while in service. */
  readonly end: EdgeEnd | null;
  readonly cause: EndCause | null;
  readonly endedAtMs: number | null;
  readonly use: readonly EdgeUse[];
  /** The last row logged: an edge found worn wore out somewhere within it. */
  readonly lastUse: EdgeUse | null;
  readonly readings: readonly EdgeReading[];
}

/** One inspection of an edge: what was seen, and all that the edge had cut by then. */
export interface EdgeReading {
  readonly entryId: string;
  readonly onDay: string;
  readonly finding: Finding;
  readonly use: readonly EdgeUse[];
}

/** One marked thing as its history says it stands. Derived: the fold of its entries, never written by hand. */
export interface ToolRecord {
  readonly id: string;
  readonly partId: string;
  readonly role: Role;
  readonly hand: Hand | null;
  readonly lot: string;
  readonly receivedOnDay: string;
  readonly opening: Opening;
  readonly state: ToolState;
  readonly stateSinceMs: number;
  readonly stateReason: string;
  /** The entry that put it where it is. */
  readonly stateEntryId: string;
  readonly holderId: string | null;
  readonly jobLineId: string | null;
  readonly bench: string;
  readonly backOnDay: string | null;
  readonly dueOnDay: string | null;
  readonly expiresOnDay: string | null;
  readonly openedOnDay: string | null;
  readonly levelMl: number | null;
  /** The day to which an inspection has lengthened a fluid's life. */
  readonly extendedUntilDay: string | null;
  /** Drops to the millilitre as counted with this bottle's dropper. */
  readonly dropsPerMl: number | null;
  /** How a bottle ended. */
  readonly disposal: FluidDisposed | null;
  /** The kit it went out in; null when it is not out in one. */
  readonly kitId: string | null;
  /** The line it is kept for, and the last day of that. */
  readonly reservation: Reservation | null;
  /** After a breakage: pieces still to be accounted for, all found, or given up as not found. */
  readonly pieces: 'none' | 'owed' | 'found' | 'not-found';
  /** How often a split die was opened or closed a touch. */
  readonly adjustments: number;
  /** Back from regrind or adjusted: its next end is gauged as a first-off before it goes out again. */
  readonly firstOffOwed: boolean;
  readonly edges: readonly EdgeRecord[];
  /** What says whether a gauge was good, in the order it was entered. */
  readonly evidence: readonly GaugeEvidence[];
  /** How long a calibration of it is good for, where somebody has decided that. */
  readonly interval: GaugeInterval | null;
  /** The knock after which it was set aside and not yet cleared. */
  readonly dropped: { readonly onDay: string; readonly atMs: number } | null;
}

export interface Reservation {
  readonly jobLineId: string;
  readonly untilDay: string;
}

/** The edge in service now, or the last one there was. */
export function currentEdge(tool: ToolRecord): EdgeRecord | undefined {
  return tool.edges[tool.edges.length - 1];
}

/** An edge that has cut nothing yet. */
export function newEdge(edgeNo: number): EdgeRecord {
  return { edgeNo, end: null, cause: null, endedAtMs: null, use: [], lastUse: null, readings: [] };
}
