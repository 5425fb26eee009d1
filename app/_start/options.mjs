import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { Refused } from './refused.mjs';

export const helpText = `Edgekeep: what every blade and die has left, and what the coming jobs need.

  npm start                       install and build if needed, then serve
  npm start -- --port 4200        another port (default 4170, or the variable PORT; 0 takes any free one)
  npm start -- --host 0.0.0.0     serve every machine of the shop's network (default 127.0.0.1, this machine only).
                                  There is no sign-in yet: anyone who reaches the address can read and write.
  npm start -- --name NAME        let it be reached under this full domain name too; may be given more than once
  npm start -- --https            serve https too, with a certificate of the shop's own: what tablets need to open the bench
                                  without network and to scan by camera. The page /trust says how they come to trust it.
  npm start -- --https-port 4300  another port for it (default the one after --port)
  npm start -- --data DIR         keep the data in DIR (default ./data, or the variable EDGEKEEP_DATA)
  npm start -- --empty            serve the shop of your own, empty at first
  npm start -- --demo             serve the demo shop again
  npm start -- --help             this text

Ctrl-C stops it. The data folder holds everything; copy it while Edgekeep is stopped to keep it safe.`;

const flags = {
  port: { type: 'string' },
  host: { type: 'string' },
  name: { type: 'string', multiple: true },
  https: { type: 'boolean' },
  'https-port': { type: 'string' },
  data: { type: 'string' },
  empty: { type: 'boolean' },
  demo: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
};

/** Reads the flags and the environment of `npm start`. `shop` is undefined when the choice of last time stands. */
export function readOptions(argv, env, root) {
  const values = parseFlags(argv);
  if (values.empty && values.demo) throw new Refused('Give either --empty or --demo, not both.');
  const port = readPort(values.port ?? (env.PORT || '4170'), '--port 4200');
  return {
    help: values.help === true,
    port,
    httpsPort: readHttpsPort(values, port),
    host: values.host || '127.0.0.1',
    names: values.name ?? [],
    dataDir: resolve(root, values.data || env.EDGEKEEP_DATA || 'data'),
    shop: values.empty ? 'shop' : values.demo ? 'demo' : undefined,
  };
}

function parseFlags(argv) {
  try {
    return parseArgs({ args: argv, options: flags, strict: true, allowPositionals: false }).values;
  } catch (error) {
    const reason = String(error.message).split(/[.\n]/)[0];
    throw new Refused(`${reason}: see npm start -- --help for the flags there are.`);
  }
}

/** The port for https, or undefined when it is not asked for. Beside a port that any free one is taken for, any free one. */
function readHttpsPort({ https, 'https-port': asked }, port) {
  if (!https && asked === undefined) return undefined;
  if (!https) throw new Refused('--https-port goes with --https: give both, or neither.');
  if (asked === undefined) return port === 0 ? 0 : port < 65535 ? port + 1 : port - 1;
  const httpsPort = readPort(asked, '--https-port 4300');
  if (httpsPort === port && port !== 0)
    throw new Refused(`Port ${port} cannot serve both http and https: give two different ones.`);
  return httpsPort;
}

function readPort(text, example) {
  const port = Number(text);
  if (/^\d{1,5}$/.test(text) && port <= 65535) return port;
  throw new Refused(`"${text}" is not a port: give a whole number from 0 to 65535, for example ${example}.`);
}
