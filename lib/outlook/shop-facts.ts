import type { EdgeReading, EdgeUse } from '../ledger/tool-record';
import type { Belief } from '../shop/belief';
import type { Costs } from '../shop/costs';
import type { Connection, LifeGuess, Material, Opening } from '../shop/noun';
import type { Part } from '../shop/part';
import type { Shop } from '../shop/shop-settings';
import type { EdgeEnd, Hand, Operation, Role, ToolState } from '../shop/vocabulary';

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
}

/** A line of an open job with how far it has come. */
export interface LineFacts {
  readonly id: string;
  readonly jobId: string;
  readonly connectionId: string;
  readonly materialId: string;
  readonly ends: number;
  readonly operations: readonly Operation[];
  readonly startOnDay: string;
  readonly dueOnDay: string;
  readonly value: 'ordinary' | 'precious';
  readonly goodCones: number;
  readonly goodThreads: number;
}

export interface OrderFacts {
  readonly id: string;
  readonly partId: string;
  readonly quantity: number;
  readonly receivedQuantity: number;
  readonly expectedOnDay: string;
}

/** Everything that the outlook is computed from: the shop's record at one version, and the day. */
export interface ShopFacts {
  readonly today: string;
  readonly shop: Shop | undefined;
  /** What things cost the shop, where that is asked for. */
  readonly costs?: Costs;
  readonly connections: readonly Connection[];
  readonly materials: readonly Material[];
  readonly parts: readonly Part[];
  readonly guesses: readonly LifeGuess[];
  /** What the shop believes before the log speaks, where it has said so. */
  readonly beliefs?: readonly Belief[];
  readonly tools: readonly ToolFacts[];
  readonly edges: readonly EdgeFacts[];
  readonly lines: readonly LineFacts[];
  readonly orders: readonly OrderFacts[];
}
