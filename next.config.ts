import type { NextConfig } from 'next';

/**
 * Headers that need no nonce. The content security policy, which does, is set per request by app/_start/page-policy.mjs.
 * No upgrade to https is asked for here: a shop's network serves plain http, and asking would lock the tablets out.
 */
const headers = [
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  { key: 'X-Frame-Options', value: 'DENY' },
  // Pages of other sites may not draw our answers into theirs.
  { key: 'Cross-Origin-Resource-Policy', value: 'same-origin' },
  { key: 'Referrer-Policy', value: 'same-origin' },
  { key: 'Permissions-Policy', value: 'camera=(self), microphone=(), geolocation=()' },
];

const config: NextConfig = {
  typedRoutes: true,
  // A fault in the types of a test must not keep a shop from starting; npm test checks those.
  typescript: { tsconfigPath: 'tsconfig.build.json' },
  poweredByHeader: false,
  headers: async () => [{ source: '/:path*', headers }],
};

export default config;
