import { X509Certificate } from 'node:crypto';
import { hostname, networkInterfaces } from 'node:os';
import { certificateNames, networkAddresses } from './certificate-names.mjs';
import { addressHost, openFrontDoor } from './front-door.mjs';
import { ensureServerCertificate } from './server-certificate.mjs';

const lookAgainMs = 10 * 60_000;
/** Where the pages find how https is served; see app/_server/served-https.ts. */
const servedHttps = Symbol.for('edgekeep.https');

/** Takes the port for https when it is asked for. */
export async function openSecureDoor({ host, httpsPort }) {
  return httpsPort === undefined ? undefined : openFrontDoor({ host, port: httpsPort, secure: true });
}

/**
 * Gives the secure door its certificate, and from then on looks every ten minutes whether the machine's addresses have
 * changed or the end is near. A later look that fails is told; what was there goes on.
 */
export async function certify(door, options, plainDoor) {
  await renew(door, options, plainDoor);
  const timer = setInterval(() => {
    renew(door, options, plainDoor).catch((error) => console.error(error.message));
  }, lookAgainMs);
  door.server.on('close', () => clearInterval(timer));
}

async function renew(door, options, plainDoor) {
  const interfaces = networkInterfaces();
  const names = certificateNames(options, hostname(), interfaces);
  const certificate = await ensureServerCertificate(options.dataDir, names, Date.now());
  door.setCertificate(certificate);
  globalThis[servedHttps] = {
    port: door.port,
    httpPort: plainDoor.port,
    hosts: reachedHosts(options, interfaces),
    authority: certificate.authority,
  };
}

/** The addresses to give to tablets, best first; none when the server listens to this machine only. */
function reachedHosts({ host, names }, interfaces) {
  if (host === '127.0.0.1' || host === '::1' || host === 'localhost') return [];
  const addresses = host === '0.0.0.0' || host === '::' ? networkAddresses(interfaces) : [host];
  return [...addresses.map(addressHost), ...names];
}

/** What the start prints for whoever sets the tablets up. The fingerprint is no secret; it is there to be compared. */
export function tabletLines(door) {
  const { hosts, authority } = globalThis[servedHttps];
  const addresses = hosts.map((host) => `https://${host}:${door.port}`);
  const where =
    addresses.length === 0
      ? `${door.address} (this machine only; with --host 0.0.0.0 also the shop's tablets)`
      : addresses.join(' or ');
  return [
    `With https it is at ${where}`,
    `Tablets must first trust the shop's authority, as the page /trust tells. Its SHA-256 fingerprint:`,
    new X509Certificate(authority).fingerprint256,
  ].join('\n');
}
