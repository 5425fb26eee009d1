import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const projectRoot = fileURLToPath(new URL('../../', import.meta.url));

/** The project's code by path from the root, with forward slashes, e.g. 'lib/units/inch-mm.ts'. */
export type Sources = ReadonlyMap<string, string>;

/** Reads every code file of these folders. */
export function readSources(folders: readonly string[]): Sources {
  const paths = folders.flatMap((folder) =>
    readdirSync(`${projectRoot}${folder}`, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(ts|tsx|mjs)$/.test(entry.name))
      .map((entry) => `${entry.parentPath.replaceAll('\\', '/')}/${entry.name}`.slice(projectRoot.length)),
  );
  return new Map(paths.sort().map((path) => [path, readFileSync(`${projectRoot}${path}`, 'utf8')]));
}

/** The text without its comments; strings stay. */
export function withoutComments(text: string): string {
  return text.replace(commentOrString, (_whole, string: string | undefined) => string ?? ' ');
}

/** The text without comments and with every string emptied: what is left is code. */
export function codeOnly(text: string): string {
  return text.replace(commentOrString, (_whole, string: string | undefined) => (string ? '""' : ' '));
}

const commentOrString =
  /("(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`)|\/\*[\s\S]*?\*\/|(?<!:)\/\/[^\n]*/g;

export interface Import {
  /** As written, e.g. '../units/inch-mm'. */
  readonly from: string;
  readonly typeOnly: boolean;
}

/** Every import and re-export of a file, dynamic ones included. */
export function importsOf(text: string): Import[] {
  const code = withoutComments(text);
  const statements = [
    ...code.matchAll(/(?:^|[;\n])\s*(import|export)\b([^'"`;]*?)\bfrom\s*['"]([^'"]+)['"]/g),
  ];
  const named = statements.map(([, , clause = '', from = '']) => ({ from, typeOnly: isTypeOnly(clause) }));
  const bare = [...code.matchAll(/(?:^|[;\n])\s*import\s*['"]([^'"]+)['"]/g)];
  const called = [...code.matchAll(/\b(?:import|require)\(\s*['"]([^'"]+)['"]\s*\)/g)];
  return [...named, ...[...bare, ...called].map(([, from = '']) => ({ from, typeOnly: false }))];
}

/** `import type { A }`, or braces in which every name is marked `type`. */
function isTypeOnly(clause: string): boolean {
  if (/^\s*type\b/.test(clause)) return true;
  const braces = /^\s*\{([^}]*)\}\s*$/.exec(clause);
  const names =
    braces?.[1]
      ?.split(',')
      .map((name) => name.trim())
      .filter(Boolean) ?? [];
  return names.length > 0 && names.every((name) => name.startsWith('type '));
}

/** True when the file exports a function or class: something that can be tested, not only types and constants. */
export function exportsFunction(text: string): boolean {
  const code = withoutComments(text);
  if (/^export\s+(?:async\s+)?(?:function\b|(?:abstract\s+)?class\b)/m.test(code)) return true;
  return /^export\s+const\s+\w+[^=\n]*=\s*(?:async\s*)?(?:<[^\n]*>)?(?:\([^)]*\)[^=\n]*|\w+\s*)=>/m.test(
    code,
  );
}

/** The file that an import names, or undefined for a package; '?' and the import where no file is found. */
export function resolveImport(
  sources: ReadonlyMap<string, unknown>,
  path: string,
  from: string,
): string | undefined {
  if (!from.startsWith('.') && !from.startsWith('@/')) return undefined;
  const bare = from.startsWith('@/') ? from.slice(2) : join(path, from);
  const endings = ['', '.ts', '.tsx', '.mjs', '/index.ts', '/index.tsx'];
  const found = endings.map((ending) => bare + ending).find((candidate) => sources.has(candidate));
  return found ?? `?${bare}`;
}

function join(path: string, from: string): string {
  const parts = path.split('/').slice(0, -1);
  for (const step of from.split('/')) {
    if (step === '..') parts.pop();
    else if (step !== '.') parts.push(step);
  }
  return parts.join('/');
}
