import { expect, it } from 'vitest';
import { hash128 } from '@/lib/import/hash128';

// source: other-software. Python 3.11 whole numbers: h = ((h ^ byte) * (2**88 + 315)) % 2**128 from the published offset.
const HASHES = [
  ['', '6c62272e07bb014262b821756295c58d'],
  ['a', 'd228cb696f1a8caf78912b704e4a8964'],
  ['ab', '08809544bbab1be95aa0733055b69a62'],
  ['abc', 'a68d622cec8b5822836dbc7977af7f3b'],
  ['foobar', '343e1662793c64bf6f0d3597ba446f18'],
  ['9⁄16 in', 'a52e839e8704b0f376213f066d752513'],
  ['x'.repeat(1000), '00e2531c2570995111249bb059f17d2d'],
] as const;

it.each(HASHES)('hash128(%j) is %s', (text, hash) => {
  expect(hash128(text)).toBe(hash);
});
