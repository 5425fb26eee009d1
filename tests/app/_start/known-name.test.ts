import type { IncomingMessage, ServerResponse } from 'node:http';
import { hostname } from 'node:os';
import { describe, expect, it } from 'vitest';
import { withKnownName } from '@/app/_start/known-name.mjs';

/** What a request under a name is answered: the status of the refusal with its sentence, or 'let in'. */
function answer(host: string | undefined, names: readonly string[] = []): string {
  let said = '';
  const response = {
    writeHead: (status: number) => {
      said = `${status} `;
    },
    end: (text: string) => {
      said += text;
    },
  } as unknown as ServerResponse;
  const handle = withKnownName(() => {
    said = 'let in';
  }, names);
  handle({ headers: { host } } as IncomingMessage, response);
  return said;
}

// source: published. RFC 6761 (localhost), RFC 6762 (.local), RFC 8375 (.home.arpa): names that no public registry gives out.
describe('a name that leads here only from inside', () => {
  it.each([
    ...[
      '127.0.0.1:4170',
      '192.168.1.20',
      '[::1]:4170',
      '[fe80::1]',
      'localhost:4170',
      'localhost.',
      'LOCALHOST',
    ],
    ...['crib-pc:4170', 'crib-pc.local:4170', 'shop.home.arpa', 'crib.lan', 'a.localhost:1', hostname()],
  ])('%s is let in', (host) => {
    expect(answer(host)).toBe('let in');
  });

  it('a request without a name comes from no browser', () => {
    expect(answer(undefined)).toBe('let in');
  });
});

// source: published. RFC 9110, 15.5.20: 421 for a request that this server does not answer under that name.
describe('a name from outside', () => {
  it.each([
    'evil.example:4170',
    '127.0.0.1.evil.example',
    'local.evil.example',
    'evil.example.',
    'xlocal.com',
    '[evil.example]',
  ])('%s is refused', (host) => {
    expect(answer(host)).toMatch(/^421 Edgekeep is not served under this name\. .* --name [a-z0-9.-]+\.\n$/);
  });

  it('is let in once it was given', () => {
    expect(answer('Tools.Shop.Example:4170', ['tools.shop.example'])).toBe('let in');
    expect(answer('other.shop.example', ['tools.shop.example'])).toContain('421 ');
  });

  it('is not repeated where it is no plain name', () => {
    expect(answer('evil.example/<script>')).toContain('--name NAME.');
  });
});
