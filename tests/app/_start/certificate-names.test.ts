import type { NetworkInterfaceInfo } from 'node:os';
import { expect, it } from 'vitest';
import { certificateNames, networkAddresses } from '@/app/_start/certificate-names.mjs';

const card = (address: string, internal = false) => ({ address, internal }) as NetworkInterfaceInfo;
const interfaces = {
  lo: [card('127.0.0.1', true), card('::1', true)],
  card: [card('192.0.2.20'), card('2001:db8::20'), card('fe80::1')],
};

// source: published. RFC 5737 and RFC 3849 (addresses for examples), RFC 4291 2.5.6 (fe80::/10 is link-local), RFC 6762 (.local).
it('names every way to reach the machine, once', () => {
  const options = { host: '0.0.0.0', names: ['Tools.Shop.Example', 'tools.shop.example'] };
  expect(certificateNames(options, 'Crib-PC', interfaces)).toEqual(
    [
      ...['127.0.0.1', '192.0.2.20', '2001:db8::20', '::1'],
      ...['crib-pc', 'crib-pc.local', 'localhost', 'tools.shop.example'],
    ].sort(),
  );
});

// source: published. RFC 1123 2.1: letters, figures and inner hyphens; labels of up to 63, names of up to 255 octets.
it('leaves out what no certificate can name', () => {
  const bad = [
    'a b',
    '-a',
    'a-',
    'a..b',
    '*.example',
    `${'a'.repeat(64)}.example`,
    'fe80::1%card',
    '',
    '1234',
  ];
  const names = certificateNames({ host: '127.0.0.1', names: bad }, 'my_pc', {});
  expect(names).toEqual(['127.0.0.1', '::1', 'localhost']);
});

it('gives tablets the addresses of the network, IPv4 first', () => {
  expect(networkAddresses(interfaces)).toEqual(['192.0.2.20', '2001:db8::20']);
});
