import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { nodeVersionRefusal } from '@/app/_start/node-version.mjs';
import { helpText, readOptions } from '@/app/_start/options.mjs';

const root = resolve('somewhere');
const read = (argv: string[], env: Record<string, string> = {}) => readOptions(argv, env, root);

describe('the flags of npm start', () => {
  it('have defaults for this machine only', () => {
    expect(read([])).toEqual({
      help: false,
      port: 4170,
      httpsPort: undefined,
      host: '127.0.0.1',
      names: [],
      dataDir: resolve(root, 'data'),
      shop: undefined,
    });
  });

  it('go before the environment', () => {
    const env = { PORT: '5000', EDGEKEEP_DATA: 'kept' };
    expect(read([], env)).toMatchObject({ port: 5000, dataDir: resolve(root, 'kept') });
    expect(read(['--port', '0', '--data', 'other'], env)).toMatchObject({
      port: 0,
      dataDir: resolve(root, 'other'),
    });
  });

  it('put https on the next port, or where it is asked for', () => {
    expect(read(['--https']).httpsPort).toBe(4171);
    expect(read(['--https', '--port', '65535']).httpsPort).toBe(65534);
    expect(read(['--https', '--port', '0']).httpsPort).toBe(0);
    expect(read(['--https', '--https-port', '8443'])).toMatchObject({ port: 4170, httpsPort: 8443 });
    expect(() => read(['--https-port', '8443'])).toThrow('goes with --https');
    expect(() => read(['--https', '--https-port', '4170'])).toThrow('two different ones');
    expect(() => read(['--https', '--https-port', 'x'])).toThrow('for example --https-port 4300');
  });

  it('choose the shop', () => {
    expect(read(['--empty']).shop).toBe('shop');
    expect(read(['--demo']).shop).toBe('demo');
    expect(() => read(['--demo', '--empty'])).toThrow('not both');
  });

  it.each([
    ['--prot', '1'],
    ['extra'],
    ['--port'],
    ['--port', '-1'],
    ['--port', '65536'],
    ['--port', '80.5'],
    ['--port', 'x'],
  ])('refuse %s %s in one sentence', (...argv) => {
    expect(() => read(argv)).toThrow(/^[^\n]+\.$/);
  });

  it('are all told by the help, with the warning that there is no sign-in', () => {
    const flags = [
      '--port',
      '--host 0.0.0.0',
      '--https',
      '--https-port',
      '--data',
      '--empty',
      '--demo',
      '--help',
    ];
    for (const flag of [...flags, 'no sign-in']) {
      expect(helpText).toContain(flag);
    }
  });
});

// source: formula. The range of package.json, >=20.9 <24.19, at and on either side of its ends.
describe('the version of Node', () => {
  it.each(['v20.9.0', 'v20.20.2', 'v21.0.0', 'v22.23.3', 'v24.0.0', 'v24.18.9'])('%s is taken', (version) => {
    expect(nodeVersionRefusal(version)).toBeUndefined();
  });

  it.each(['v12.22.0', 'v18.20.8', 'v20.8.1', 'v24.19.0', 'v24.21.0', 'v25.0.0'])(
    '%s is refused',
    (version) => {
      expect(nodeVersionRefusal(version)).toContain(
        `Node ${version}: use Node 20.9 or newer and below 24.19`,
      );
    },
  );
});
