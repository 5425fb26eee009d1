/** A row of the cut log as far as ends are counted along it. */
export interface CountedRow {
  readonly goodEnds: number;
}

/**
 * The row of a line's cut log that an end falls in, by count: rows in the order in which they were cut, good ends numbered
 * along them from one. The log counts ends and does not name them, so this is the log's word on the end only as long as
 * ends were numbered in the order in which they were cut; undefined where the rows hold too few.
 * Formula: the first row at which the running sum of good ends reaches the number. Domain: endNo 1 or more.
 * Source: formula.
 * @example rowOfEnd([{ goodEnds: 1 }, { goodEnds: 4 }], 2) // => { "goodEnds": 4 }
 */
export function rowOfEnd<R extends CountedRow>(rows: readonly R[], endNo: number): R | undefined {
  let counted = 0;
  return rows.find(({ goodEnds }) => {
    counted += goodEnds;
    return endNo >= 1 && counted >= endNo;
  });
}
