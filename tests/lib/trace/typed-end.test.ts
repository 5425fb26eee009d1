import { expect, it } from 'vitest';
import { typedEnd } from '@/lib/trace/typed-end';

// source: hand. How an end is written on a tag or said to a clerk.
it.each([
  ['J-057.1 end 2', 'J-057.1', 2],
  ['j-057.1 2', 'J-057.1', 2],
  ['J-057.1/12', 'J-057.1', 12],
  ['  J-057.1   End no. 3 ', 'J-057.1', 3],
])('reads %s', (typed, jobLineId, endNo) => {
  expect(typedEnd(typed)).toEqual({ jobLineId, endNo });
});

// source: hand. A mark is no line; a line alone names no end; ends are numbered from one.
it.each(['S-18 end 2', 'J-057.1', 'J-057', 'J-057.1 end 0', 'G-38-GO-1', ''])(
  'reads %s as no end',
  (typed) => {
    expect(typedEnd(typed)).toBeUndefined();
  },
);
