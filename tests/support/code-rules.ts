import { codeOnly, exportsFunction, type Sources } from './source-files';

/** What pure code may not touch: the clock, chance, the machine, the console. */
const impure: readonly (readonly [RegExp, string])[] = [
  [/\bDate\.now\b/, 'Date.now'],
  [/\bnew Date\(\s*\)/, 'new Date()'],
  [/(?<!new )\bDate\(/, 'Date()'],
  [/\bperformance\./, 'performance'],
  [/\bMath\.random\b/, 'Math.random'],
  [/\bcrypto\./, 'crypto'],
  [/\bprocess\./, 'process'],
  [/\bconsole\./, 'console'],
  [/\bglobalThis\b/, 'globalThis'],
  [/\bfetch\(/, 'fetch'],
  [/\bset(?:Timeout|Interval)\(/, 'timers'],
];

export function impureFaults(sources: Sources): string[] {
  return [...sources].flatMap(([path, text]) => {
    const code = codeOnly(text);
    return impure.filter(([pattern]) => pattern.test(code)).map(([, name]) => `${path} uses ${name}`);
  });
}

/** A callback that waits inside a transaction leaves its rows behind when it throws: commands never wait. */
export function waitingFaults(sources: Sources): string[] {
  return [...sources]
    .filter(([, text]) => /\b(?:async|await)\b|\.then\(/.test(codeOnly(text)))
    .map(([path]) => `${path} waits`);
}

export function defaultExportFaults(sources: Sources): string[] {
  const pattern = /^\s*export\s+default\b|\bas\s+default\b/m;
  return [...sources]
    .filter(([, text]) => pattern.test(codeOnly(text)))
    .map(([path]) => `${path} has a default export`);
}

export function nameFaults(sources: Sources): string[] {
  return [...sources.keys()].flatMap((path) => {
    const name = path.slice(path.lastIndexOf('/') + 1);
    if (/^(?:utils?|helpers?|misc|types|common)\./.test(name)) return [`${path} names no one idea`];
    return /^[a-z0-9]+(?:-[a-z0-9]+)*(?:\.(?:test|bench|config))?\.(?:ts|tsx|mjs)$/.test(name)
      ? []
      : [`${path} is not in kebab case`];
  });
}

export function lengthFaults(sources: Sources, most = 300): string[] {
  return [...sources].flatMap(([path, text]) => {
    const lines = text.split('\n').length - (text.endsWith('\n') ? 1 : 0);
    return lines > most ? [`${path} has ${lines} lines`] : [];
  });
}

/** Files of lib that export a function and have no test of the same name. */
export function mirrorFaults(lib: Sources, tests: Sources): string[] {
  return [...lib].flatMap(([path, text]) => {
    if (path.endsWith('/index.ts') || !exportsFunction(text)) return [];
    const mirror = `tests/${path.replace(/\.tsx?$/, '.test.ts')}`;
    return tests.has(mirror) || tests.has(`${mirror}x`) ? [] : [`${path} has no ${mirror}`];
  });
}
