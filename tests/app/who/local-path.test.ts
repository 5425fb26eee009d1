import { expect, it } from 'vitest';
import { localPath } from '@/app/who/local-path';

// source: hand. Our own addresses, with the signs that IDs and queries may hold.
it.each(['/', '/import', '/tools/D-38-11', '/plan/lines/J-004.1', '/tools?find=D-38&page=2'])(
  'goes to %s',
  (path) => {
    expect(localPath(path)).toBe(path);
  },
);

// source: published. WHATWG URL Standard, 4.4: what begins with two slashes, or with a slash and a backslash, names a host;
// dot segments are taken out before that is looked at again by whoever resolves the path alone.
it.each([
  ...[
    '//evil.example',
    '/\\evil.example',
    '\\\\evil.example',
    'https://evil.example',
    'javascript:alert(1)',
    '',
  ],
  ...[
    '/..//evil.example',
    '/.//evil.example',
    '/x/..//evil.example',
    '/../tools',
    '/a\n/b',
    '/a b',
    '/\t/evil.example',
  ],
])('does not follow %j', (path) => {
  expect(localPath(path)).toBe('/');
});
