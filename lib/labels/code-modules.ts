import { invariant } from '../invariant';

/** A code as a grid of squares, dark where 1; a bar code is one row of them. */
export interface CodeModules {
  readonly across: number;
  readonly upright: number;
  /** Row by row from the top left, 0 or 1. */
  readonly dark: readonly number[];
}

/** One row of modules from the widths of bars and spaces in turn, beginning with a bar. */
export function modulesOfBars(widths: readonly number[]): CodeModules {
  const dark = widths.flatMap((width, at) => Array.from({ length: width }, () => (at + 1) % 2));
  return { across: dark.length, upright: 1, dark };
}

/**
 * The dark squares as the path of a drawing whose unit is one module, its corner at 0 0: runs of dark squares in a row become one
 * rectangle, so no hairline shows between them in print. Domain: a grid of across × upright squares.
 */
export function modulePath({ across, upright, dark }: CodeModules): string {
  invariant(dark.length === across * upright, 'a code has across × upright modules');
  let path = '';
  for (let y = 0; y < upright; y++) {
    for (let x = 0; x < across; x++) {
      if (dark[y * across + x] !== 1) continue;
      const from = x;
      while (x + 1 < across && dark[y * across + x + 1] === 1) x += 1;
      path += `M${from} ${y}h${x + 1 - from}v1h${from - x - 1}z`;
    }
  }
  return path;
}
