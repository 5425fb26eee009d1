import { expect, it } from 'vitest';
import { tabletAddresses } from '@/app/trust/_parts/tablet-addresses';

const https = {
  port: 4171,
  httpPort: 4170,
  hosts: ['192.0.2.20', '198.51.100.7', '[fd00::2]'],
  authority: '',
};

it('puts the address first that the page was opened under', () => {
  expect(tabletAddresses(https, '198.51.100.7:4170').map(({ host }) => host)).toEqual([
    '198.51.100.7',
    '192.0.2.20',
    '[fd00::2]',
  ]);
  expect(tabletAddresses(https, '[FD00::2]:4170')[0]?.host).toBe('[fd00::2]');
});

it('leads over plain http to trust and over https to the bench', () => {
  expect(tabletAddresses(https, '127.0.0.1:4170')[0]).toEqual({
    host: '192.0.2.20',
    trust: 'http://192.0.2.20:4170/trust',
    bench: 'https://192.0.2.20:4171/bench',
  });
  expect(tabletAddresses({ ...https, hosts: [] }, null)).toEqual([]);
});
