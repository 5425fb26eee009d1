import type { EdgeEnd, EdgeKind } from '../shop/vocabulary';

/** Names one edge of one tool. */
export interface EdgeName {
  readonly toolId: string;
  readonly edgeNo: number;
}

/** An edge came into use. */
export interface EdgeBegan extends EdgeName {
  readonly type: 'began';
  readonly kind: EdgeKind;
  readonly partId: string;
  readonly odIn: number;
  readonly regrinds: number;
  /** False when it had been used before, by nobody knows how much: nothing is predicted of it or learnt from it. */
  readonly startKnown: boolean;
}

/** A row of the cut log. */
export interface RowCut extends EdgeName {
  readonly type: 'cut';
  readonly atMs: number;
  readonly connectionId: string;
  readonly materialId: string;
  readonly dry: boolean;
  readonly rework: boolean;
  readonly ends: number;
  readonly goodEnds: number;
  /** Base exposure of one end, turns or mm³. */
  readonly exposurePerEnd: number;
  /** Ends that were asked of the edge when the row began, where that is known; else its own ends. */
  readonly askedEnds?: number;
  /**
   * True of what the edge had cut, by count, before the log began to follow it: nothing could have been said of it, and the edge is
   * in the log because it outlasted it.
   */
  readonly opening?: boolean;
}

/** Someone looked at the edge. */
export interface EdgeRead extends EdgeName {
  readonly type: 'read';
  readonly worn: number;
  readonly sd: number;
}

export interface EdgeEnded extends EdgeName {
  readonly type: 'ended';
  readonly atMs: number;
  readonly how: EdgeEnd | 'lost';
}

/** What a shop's log tells of its edges, in the order in which it happened. */
export type LogEvent = EdgeBegan | RowCut | EdgeRead | EdgeEnded;
