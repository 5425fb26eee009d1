/** What was planned to land on the work: one row of the cut log in drops. */
export interface FluidUseRow {
  readonly onDay: string;
  readonly materialId: string;
  readonly drops: number;
  /** The bottle named in the row; null where none was. */
  readonly fluidId: string | null;
}

/** How much was in a bottle on a day: as received or as read. */
export interface LevelReading {
  readonly toolId: string;
  readonly onDay: string;
  readonly levelMl: number;
}

/** What the shop's own use of fluid is learnt from: levels in the order read, and what was cut with the fluid. */
export interface FluidLog {
  readonly levels: readonly LevelReading[];
  readonly rows: readonly FluidUseRow[];
}
