import { exportsFunction, importsOf, resolveImport, type Sources } from './source-files';

const zones = [
  'lib',
  'db/schema',
  'db/queries',
  'db/commands',
  'db/client',
  'db/study',
  'db/core',
  'app/server',
  'app/client',
  'app/start',
  'seed',
  'tests',
] as const;
type Zone = (typeof zones)[number];

/**
 * Who may import whom; anything not listed is an error. `db/core` is open, migrate, the ledger and the like; `db/study` are
 * the programs that read a shop in a process of their own.
 */
const allowed: Record<Zone, readonly Zone[]> = {
  lib: ['lib'],
  'db/schema': ['lib', 'db/schema'],
  'db/core': ['lib', 'db/schema', 'db/core'],
  'db/queries': ['lib', 'db/schema', 'db/core', 'db/queries'],
  'db/commands': ['lib', 'db/schema', 'db/core', 'db/queries', 'db/commands'],
  'db/client': ['lib', 'db/schema', 'db/core'],
  'db/study': ['lib', 'db/core', 'db/queries'],
  'app/server': ['lib', 'db/core', 'db/queries', 'db/commands', 'db/client', 'app/server', 'app/client'],
  'app/client': ['lib', 'app/server', 'app/client'],
  'app/start': ['lib', 'db/core', 'seed', 'app/start'],
  seed: ['lib', 'db/schema', 'db/core', 'db/queries', 'db/commands', 'seed'],
  tests: zones.filter((zone) => zone !== 'db/client'),
};

/** Packages a zone may use; the app may use any. */
const packages: Partial<Record<Zone, RegExp>> = {
  lib: /^zod$/,
  'db/schema': /^drizzle-orm(\/|$)|^zod$/,
  'db/core': /^(node:|drizzle-orm(\/|$)|better-sqlite3$|zod$)/,
  'db/queries': /^(drizzle-orm(\/|$)|better-sqlite3$|zod$)/,
  'db/commands': /^(drizzle-orm(\/|$)|better-sqlite3$|zod$)/,
  'db/client': /^(node:|server-only$|better-sqlite3$)/,
  'db/study': /^node:/,
  seed: /^(node:|zod$)/,
};

export function zoneOf(path: string, text: string): Zone | undefined {
  const db = /^db\/(schema|queries|commands)\//.exec(path)?.[1];
  if (db) return `db/${db}` as Zone;
  if (/^db\/client(\.|\/)/.test(path)) return 'db/client';
  if (/^db\/(backtest|comparisons|figures)\.ts$/.test(path)) return 'db/study';
  if (path.startsWith('db/')) return 'db/core';
  if (path.startsWith('app/_start/')) return 'app/start';
  if (path.startsWith('app/')) return hasDirective(text, 'use client') ? 'app/client' : 'app/server';
  const top = path.split('/')[0];
  return zones.find((zone) => zone === top);
}

/** Every import that breaks the rules, one sentence each. */
export function importFaults(sources: Sources): string[] {
  return [...sources].flatMap(([path, text]) => {
    const zone = zoneOf(path, text);
    if (!zone) return [`${path} lies in no known part of the project`];
    return importsOf(text).flatMap(({ from, typeOnly }) => {
      const target = resolveImport(sources, path, from);
      if (target === undefined) return packageFault(zone, path, from);
      if (target.startsWith('?')) return assetFault(path, target.slice(1));
      return zoneFault(sources, { path, zone, target, typeOnly });
    });
  });
}

function packageFault(zone: Zone, path: string, from: string): string[] {
  const rule = packages[zone];
  return rule && !rule.test(from) ? [`${path} (${zone}) may not use the package ${from}`] : [];
}

/** Style sheets, data and the like are not code; anything else must be a file that is there. */
function assetFault(path: string, target: string): string[] {
  return /\.(css|json|svg|sql)$/.test(target) || target === 'package'
    ? []
    : [`${path} imports ${target}, which is not there`];
}

function zoneFault(
  sources: Sources,
  { path, zone, target, typeOnly }: { path: string; zone: Zone; target: string; typeOnly: boolean },
): string[] {
  const text = sources.get(target) ?? '';
  const to = zoneOf(target, text);
  if (!to || !allowed[zone].includes(to)) return [`${path} (${zone}) may not import ${target} (${to})`];
  const runs = zone === 'db/schema' && to === 'lib' && !typeOnly && exportsFunction(text);
  return runs ? [`${path} (db/schema) may import types and constants of lib only, not ${target}`] : [];
}

/**
 * Client components that would carry the database into the browser: from each, along every import that is not of types
 * only, up to files marked 'use server', which stay behind.
 */
export function clientReachFaults(sources: Sources): string[] {
  const clients = [...sources].filter(
    ([path, text]) => path.startsWith('app/') && hasDirective(text, 'use client'),
  );
  return clients.flatMap(([client]) => {
    const seen = new Set([client]);
    for (const path of seen) {
      const text = sources.get(path) ?? '';
      if (hasDirective(text, 'use server')) continue;
      for (const target of valueTargets(sources, path)) seen.add(target);
    }
    const carried = [...seen].filter((path) => path.startsWith('db/'));
    return carried.map((path) => `${client} carries ${path} into the browser`);
  });
}

/** Circles of imports among these files, each named by the file that closes it. */
export function cycleFaults(sources: Sources): string[] {
  const done = new Set<string>();
  const faults: string[] = [];
  const visit = (path: string, trail: readonly string[]): void => {
    if (trail.includes(path)) {
      faults.push([...trail.slice(trail.indexOf(path)), path].join(' -> '));
      return;
    }
    if (done.has(path)) return;
    for (const target of valueTargets(sources, path)) visit(target, [...trail, path]);
    done.add(path);
  };
  for (const path of sources.keys()) visit(path, []);
  return faults;
}

function valueTargets(sources: Sources, path: string): string[] {
  return importsOf(sources.get(path) ?? '').flatMap(({ from, typeOnly }) => {
    const target = typeOnly ? undefined : resolveImport(sources, path, from);
    return target && sources.has(target) ? [target] : [];
  });
}

function hasDirective(text: string, directive: string): boolean {
  const first = text.replace(/^(?:\s|\/\*[\s\S]*?\*\/|\/\/[^\n]*\n)*/, '');
  return first.startsWith(`'${directive}'`) || first.startsWith(`"${directive}"`);
}
