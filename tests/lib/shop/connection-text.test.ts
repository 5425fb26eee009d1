import { expect, it } from 'vitest';
import { connectionKey, connectionText, readConnectionKey } from '@/lib/shop/connection-text';

it('names a connection in shop words', () => {
  expect(connectionText({ odNum: 9, odDen: 16, service: 'high' })).toBe('9⁄16 high pressure');
  expect(connectionText({ odNum: 1, odDen: 1, service: 'medium' })).toBe('1 medium pressure');
});

it.each([
  [{ num: 9, den: 16 }, 'high', '9-16-high'],
  [{ num: 1, den: 1 }, 'medium', '1-medium'],
  [{ num: 1, den: 4 }, 'medium', '1-4-medium'],
] as const)('the key of %o %s is %s, and reads back', (size, service, key) => {
  expect(connectionKey(size, service)).toBe(key);
  expect(readConnectionKey(key)).toEqual({ odNum: size.num, odDen: size.den, service });
});

it.each([
  '',
  'high',
  '9-16',
  '9-16-low',
  '9/16-high',
  '9-0-high',
  '0-high',
  '0-16-high',
  '1-16-high\n',
  '9-16-high-2',
  '__proto__',
])('is no key: %j', (key) => {
  expect(readConnectionKey(key)).toBeUndefined();
});
