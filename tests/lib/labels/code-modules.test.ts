import fc from 'fast-check';
import { expect, it } from 'vitest';
import { modulePath, modulesOfBars } from '@/lib/labels/code-modules';

/** Paints a path of rectangles back into squares. */
function painted(path: string, across: number, upright: number): number[] {
  const dark = Array<number>(across * upright).fill(0);
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let at = 0; at < Number(width); at++) dark[Number(y) * across + Number(x) + at] = 1;
  }
  return dark;
}

// source: identity. What is drawn, painted back, is the grid it was drawn from.
it('draws every dark square and no other', () => {
  const grids = fc
    .integer({ min: 1, max: 12 })
    .chain((across) =>
      fc
        .integer({ min: 1, max: 12 })
        .chain((upright) =>
          fc
            .array(fc.constantFrom(0, 1), { minLength: across * upright, maxLength: across * upright })
            .map((dark) => ({ across, upright, dark })),
        ),
    );
  fc.assert(
    fc.property(grids, (grid) => {
      expect(painted(modulePath(grid), grid.across, grid.upright)).toEqual(grid.dark);
    }),
  );
});

// source: hand. A bar of 2, a space of 1, a bar of 3.
it('bars and spaces become one row', () => {
  const row = modulesOfBars([2, 1, 3]);
  expect(row).toEqual({ across: 6, upright: 1, dark: [1, 1, 0, 1, 1, 1] });
  expect(modulePath(row)).toBe('M0 0h2v1h-2zM3 0h3v1h-3z');
});

it('throws on a grid that is not full', () => {
  expect(() => modulePath({ across: 2, upright: 2, dark: [1] })).toThrow('invariant broken');
});
