import { isIP } from 'node:net';

/**
 * The names and addresses a tablet may reach this machine under, for its certificate: the loopback ones, the machine's own
 * name, every address of its network cards, and each --name. Link-local addresses are left out: no browser can be given one.
 */
export function certificateNames({ host, names }, machineName, interfaces) {
  const cards = Object.values(interfaces).flatMap((card) => card ?? []);
  const own = machineName.toLowerCase().replace(/\.$/, '');
  const all = ['localhost', '127.0.0.1', '::1', own, own.includes('.') ? own : `${own}.local`];
  all.push(...cards.map(({ address }) => address), host, ...names.map((name) => name.toLowerCase()));
  return [...new Set(all.filter((name) => isAddress(name) || isName(name)))].sort();
}

/** The addresses of this machine that another device of the network can open, IPv4 before IPv6. */
export function networkAddresses(interfaces) {
  const cards = Object.values(interfaces).flatMap((card) => card ?? []);
  const reached = cards.filter(({ internal, address }) => !internal && isAddress(address));
  const addresses = [...new Set(reached.map(({ address }) => address))];
  return addresses.sort((a, b) => isIP(a) - isIP(b) || (a < b ? -1 : 1));
}

function isAddress(name) {
  return (
    isIP(name) !== 0 && !name.includes('%') && !/^fe[89ab]/i.test(name) && !/^(0\.0\.0\.0|::)$/.test(name)
  );
}

/** A name as RFC 1123 has it: labels of letters, figures and inner hyphens; not a lone number, which would be an address. */
function isName(name) {
  const label = '[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?';
  return name.length <= 253 && new RegExp(`^(?=.*[a-z])${label}(?:\\.${label})*$`).test(name);
}
