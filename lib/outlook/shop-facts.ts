import type { FluidLog } from '../fluid/fluid-log';
import type { Delivery } from '../lead-time/delivery';
import type { EdgeReading, EdgeUse } from '../ledger/tool-record';
import type { ReadingSettings } from '../reading/reading-settings';
import type { Belief } from '../shop/belief';
import type { Costs } from '../shop/costs';
import type { Duty } from '../shop/duty';
import type { FluidLot } from '../shop/fluid-lot';
import type { Connection, LifeGuess, Material, Opening } from '../shop/noun';
import type { Part } from '../shop/part';
import type { Shop } from '../shop/shop-settings';
import type { CutOperation, EdgeEnd, Hand, Operation, Role, ToolState } from '../shop/vocabulary';

/** An edge with what it has cut, as the record has it. */
export interface EdgeFacts {
  readonly toolId: string;
  readonly edgeNo: number;
  readonly end: EdgeEnd | null;
  readonly lastUse: EdgeUse | null;
  readonly use: readonly EdgeUse[];
  readonly readings?: readonly EdgeReading[];
}

/** A tool as far as the outlook cares. */
export interface ToolFacts {
  readonly id: string;
  readonly partId: string;
  readonly role: Role;
  readonly hand: Hand | null;
  readonly opening: Opening;
  readonly state: ToolState;
  readonly jobLineId: string | null;
  readonly backOnDay: string | null;
  readonly dueOnDay: string | null;
  readonly expiresOnDay: string | null;
  readonly openedOnDay: string | null;
  readonly levelMl: number | null;
  /** The lot as marked on it. */
  readonly lot?: string;
  /** Fluid: the day to which an inspection lengthened its life. */
  readonly extendedUntilDay?: string | null;
  readonly stateSinceMs?: number;
  /** Fluid: drops to the millilitre as counted with its dropper. */
  readonly dropsPerMl?: number | null;
  /** The line it is kept for, and the last day of that. */
  readonly reservation?: { readonly jobLineId: string; readonly untilDay: string } | null;
  /** Back from regrind or adjusted: its next end is gauged as a first-off before it goes out again. */
  readonly firstOffOwed?: boolean;
}

/** A gauge that is due by ends as well: how many its calibration is good for, and how many it has had since. */
export interface GaugeUseFacts {
  readonly toolId: string;
  readonly intervalEnds: number;
  readonly endsSince: number;
}

/** A line of an open job with how far it has come. */
export interface LineFacts {
  readonly id: string;
  readonly jobId: string;
  readonly connectionId: string;
  readonly materialId: string;
  readonly heat?: string;
  readonly ends: number;
  readonly operations: readonly Operation[];
  readonly startOnDay: string;
  readonly dueOnDay: string;
  readonly value: 'ordinary' | 'precious';
  /** What the tube will carry. Absent: ordinary service. */
  readonly duty?: Duty;
  /** The day of the cleaning written down for it; null or absent where none is. */
  readonly cleanedOnDay?: string | null;
  readonly goodCones: number;
  readonly goodThreads: number;
  /** Ends accepted at the vise; absent or 0 where none was looked at. */
  readonly acceptedEnds?: number;
  /** Those of them with every gauge recorded and no recall open on them. */
  readonly releasableEnds?: number;
  /** Tools that something broke off while out for it, still searched for: a piece may lie in one of its tubes. */
  readonly piecesOwed?: readonly string[];
}

export interface OrderFacts {
  readonly id: string;
  readonly partId: string;
  readonly quantity: number;
  readonly receivedQuantity: number;
  readonly expectedOnDay: string;
  /** Who it is placed with; '' or absent: the part's supplier. */
  readonly supplier?: string;
  readonly placedOnDay?: string;
  readonly promisedOnDay?: string;
  /** When the expected day was last said. Absent: the arrival is taken as certain. */
  readonly statedOnDay?: string;
  /** Names the luck of its day where that is not its own: a trial order has that of one that might be placed. */
  readonly luckKey?: string;
  readonly chasedOnDay?: string | null;
}

/** An order that is drafted or approved, not placed yet. */
export interface DraftFacts {
  readonly id: string;
  readonly partId: string;
  readonly quantity: number;
}

/** What was cut of late, by connection, material and operation: the rate at which work comes beyond the plan. */
export interface RecentUse {
  readonly connectionId: string;
  readonly materialId: string;
  readonly operation: CutOperation;
  readonly ends: number;
  /** Days over which these ends were cut. */
  readonly days: number;
}

/** Everything that the outlook is computed from: the shop's record at one version, and the day. */
export interface ShopFacts {
  readonly today: string;
  readonly shop: Shop | undefined;
  /** What things cost the shop, where that is asked for. */
  readonly costs?: Costs;
  /** How the shop reads wear; absent where it has not said so. */
  readonly readingSettings?: ReadingSettings;
  /** What is known of the lots of fluid. */
  readonly fluidLots?: readonly FluidLot[];
  /** Levels read, and what was cut meanwhile: what the shop's own use of fluid is learnt from. */
  readonly fluidLog?: FluidLog;
  readonly connections: readonly Connection[];
  readonly materials: readonly Material[];
  readonly parts: readonly Part[];
  readonly guesses: readonly LifeGuess[];
  /** What the shop believes before the log speaks, where it has said so. */
  readonly beliefs?: readonly Belief[];
  readonly tools: readonly ToolFacts[];
  /** Gauges that are due by ends as well as by day. */
  readonly gaugeUse?: readonly GaugeUseFacts[];
  readonly edges: readonly EdgeFacts[];
  readonly lines: readonly LineFacts[];
  readonly orders: readonly OrderFacts[];
  readonly drafts?: readonly DraftFacts[];
  /** Past orders that came in full: what suppliers promised and achieved. */
  readonly deliveries?: readonly Delivery[];
  readonly recentUse?: readonly RecentUse[];
}
