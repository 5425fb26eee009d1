import type { ServedHttps } from '@/app/_server/served-https';

export interface TabletAddress {
  readonly host: string;
  /** The page that leads through trusting, on plain http: nothing is trusted yet. */
  readonly trust: string;
  /** The bench, once the authority is trusted. */
  readonly bench: string;
}

/** The addresses for tablets, the one that this page was opened under first: it is known to lead here. */
export function tabletAddresses(https: ServedHttps, openedUnder: string | null): readonly TabletAddress[] {
  const here = openedUnder?.replace(/:\d+$/, '').toLowerCase();
  const hosts = [...https.hosts].sort((a, b) => Number(b === here) - Number(a === here));
  return hosts.map((host) => ({
    host,
    trust: `http://${host}:${https.httpPort}/trust`,
    bench: `https://${host}:${https.port}/bench`,
  }));
}
