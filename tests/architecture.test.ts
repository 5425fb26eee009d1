import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  defaultExportFaults,
  impureFaults,
  lengthFaults,
  mirrorFaults,
  nameFaults,
  waitingFaults,
} from './support/code-rules';
import { clientReachFaults, cycleFaults, importFaults } from './support/import-rules';
import { projectRoot, readSources, type Sources } from './support/source-files';

const all = readSources(['app', 'db', 'lib', 'seed', 'tests']);
const lib = part('lib/');
const commands = part('db/commands/');

function part(prefix: string): Sources {
  return new Map([...all].filter(([path]) => path.startsWith(prefix)));
}

function planted(files: Record<string, string>): Sources {
  return new Map(Object.entries(files));
}

it('has read the project', () => {
  for (const prefix of ['app/', 'db/queries/', 'db/schema/', 'db/commands/', 'lib/', 'seed/', 'tests/']) {
    expect(part(prefix).size, prefix).toBeGreaterThan(0);
  }
});

describe('imports', () => {
  it('run from app to db to lib and never back', () => {
    expect(importFaults(all)).toEqual([]);
  });

  it('form no circle in lib and db', () => {
    expect(cycleFaults(lib)).toEqual([]);
    expect(cycleFaults(part('db/'))).toEqual([]);
  });

  it('carry no database code into the browser', () => {
    expect(clientReachFaults(all)).toEqual([]);
  });

  it.each([
    ['lib/a.ts', "import { b } from '../db/queries/b';", 'may not import db/queries/b.ts'],
    ['lib/a.ts', "import type { B } from '@/db/queries/b';", 'may not import db/queries/b.ts'],
    ['lib/a.ts', "import fs from 'node:fs';", 'may not use the package node:fs'],
    ['lib/a.ts', "import { x } from 'react';", 'may not use the package react'],
    ['lib/a.ts', "const x = await import('drizzle-orm');", 'may not use the package drizzle-orm'],
    ['lib/a.ts', "import './gone';", 'lib/gone, which is not there'],
    ['db/queries/a.ts', "import {\n  c,\n} from '../commands/c';", 'may not import db/commands/c.ts'],
    ['db/queries/a.ts', "import { db } from '../client';", 'may not import db/client.ts'],
    ['db/schema/a.ts', "import { f } from '../../lib/f';", 'types and constants of lib only'],
    ['db/open.ts', "import { cache } from 'react';", 'may not use the package react'],
    [
      'app/a.tsx',
      "'use client';\nimport type { B } from '@/db/queries/b';",
      'may not import db/queries/b.ts',
    ],
    ['app/a.tsx', "import { s } from '@/db/schema/s';", 'may not import db/schema/s.ts'],
    ['db/backtest.ts', "import { c } from './commands/c';", 'may not import db/commands/c.ts'],
    ['app/a.tsx', "import { seed } from '@/seed/seed';", 'may not import seed/seed.ts'],
    ['seed/a.ts', "export * from '../db/client';", 'may not import db/client.ts'],
    ['db/commands/a.ts', "import { x } from '@/app/x';", 'may not import app/x.ts'],
    ['scripts/a.ts', '', 'no known part'],
  ])('checker finds a planted fault in %s: %s', (path, text, fault) => {
    const others = ['db/queries/b', 'db/commands/c', 'db/client', 'db/schema/s', 'seed/seed', 'app/x'];
    const files = Object.fromEntries(others.map((name) => [`${name}.ts`, 'export const x = 1;']));
    const faults = importFaults(planted({ ...files, 'lib/f.ts': 'export function f() {}', [path]: text }));
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(fault);
  });

  it('checker lets the allowed imports pass, and ignores those in comments', () => {
    const files = planted({
      'lib/f.ts':
        "// import fs from 'node:fs'\n/* import x from 'react' */\nimport { z } from 'zod';\nexport function f() {}",
      'db/schema/s.ts': "import type { F } from '../../lib/f';",
      'db/commands/c.ts': "import { b } from '../queries/b';\nimport { f } from '@/lib/f';",
      'db/queries/b.ts': "import { s } from '../schema/s';",
      'app/page.tsx': "import { b } from '@/db/queries/b';\nimport styles from './page.module.css';",
    });
    expect(importFaults(files)).toEqual([]);
  });

  it('checker finds a client component that reaches the database through another file', () => {
    const files = {
      'app/button.tsx': "'use client';\nimport { label } from './label';\nimport { send } from './actions';",
      'app/actions.ts': "'use server';\nimport { b } from '@/db/queries/b';",
      'app/label.ts': "import type { B } from '@/db/queries/b';",
      'db/queries/b.ts': 'export const b = 1;',
    };
    expect(clientReachFaults(planted(files))).toEqual([]);
    const bad = { ...files, 'app/label.ts': "import { b } from '@/db/queries/b';" };
    expect(clientReachFaults(planted(bad))).toEqual([
      'app/button.tsx carries db/queries/b.ts into the browser',
    ]);
  });

  it('checker finds a circle', () => {
    const files = { 'lib/a.ts': "export * from './b';", 'lib/b.ts': "import { a } from './a';" };
    expect(cycleFaults(planted(files))).toEqual(['lib/a.ts -> lib/b.ts -> lib/a.ts']);
    expect(cycleFaults(planted({ ...files, 'lib/b.ts': "import type { A } from './a';" }))).toEqual([]);
  });
});

describe('code', () => {
  it('in lib reads no clock, no chance and no machine', () => {
    expect(impureFaults(lib)).toEqual([]);
  });

  it('in commands never waits', () => {
    expect(waitingFaults(commands)).toEqual([]);
  });

  it('in lib and db has named exports and names of one idea each', () => {
    expect(defaultExportFaults(part('lib/'))).toEqual([]);
    expect(defaultExportFaults(part('db/'))).toEqual([]);
    expect([...nameFaults(lib), ...nameFaults(part('db/')), ...nameFaults(part('seed/'))]).toEqual([]);
  });

  it('stands in files of at most 300 lines', () => {
    expect(lengthFaults(all)).toEqual([]);
  });

  it('in lib has a test of the same name for every file with a function', () => {
    expect(mirrorFaults(lib, all)).toEqual([]);
  });

  it.each([
    'export const now = () => Date.now();',
    'const d = new Date();',
    'const r = Math.random();',
    'if (process.env.X) {}',
    'console.log(1);',
    'setTimeout(f, 1);',
  ])('checker finds what is impure: %s', (text) => {
    expect(impureFaults(planted({ 'lib/a.ts': text }))).toHaveLength(1);
  });

  it('checker does not take words in comments, strings and dates of a given day for impurity', () => {
    const text = "// Date.now\nconst a = 'Math.random'; const d = new Date(0); /* console.log */";
    expect(impureFaults(planted({ 'lib/a.ts': text }))).toEqual([]);
  });

  it('checker finds waiting, default exports, long files, vague names and missing mirrors', () => {
    const bad = 'export default async function f() {}';
    expect(waitingFaults(planted({ 'db/commands/a.ts': bad }))).toHaveLength(1);
    expect(waitingFaults(planted({ 'db/commands/a.ts': '// async\nexport function f() {}' }))).toEqual([]);
    expect(defaultExportFaults(planted({ 'lib/a.ts': bad }))).toHaveLength(1);
    expect(lengthFaults(planted({ 'lib/a.ts': '\n'.repeat(301) }))).toHaveLength(1);
    expect(lengthFaults(planted({ 'lib/a.ts': '\n'.repeat(300) }))).toEqual([]);
    expect(
      nameFaults(planted({ 'lib/utils.ts': '', 'lib/badName.ts': '', 'lib/good-name.ts': '' })),
    ).toHaveLength(2);
    const functions = [
      'export function f() {}',
      'export const f = (x: number): number => x;',
      'export class F {}',
    ];
    for (const text of functions)
      expect(mirrorFaults(planted({ 'lib/a.ts': text }), planted({}))).toHaveLength(1);
    const constants = 'export interface A {}\nexport const list = [1, 2] as const;';
    expect(mirrorFaults(planted({ 'lib/a.ts': constants }), planted({}))).toEqual([]);
  });
});

it('the top level holds only what belongs there', () => {
  const kept =
    /^(README\.md|DEVELOPERS\.md|CHANGELOG\.md|LICENSE|package(-lock)?\.json|\.gitignore|\.gitattributes|\.ci)$/;
  const tools = /^(tsconfig(\.build)?\.json|biome\.json|vitest\.config\.ts|next\.config\.ts|knip\.json)$/;
  const folders = /^(app|db|lib|tests|seed|public)$/;
  const made = /^(node_modules|\.next|\.run|\.git|data|coverage|next-env\.d\.ts|.*\.tsbuildinfo)$/;
  const known = [kept, tools, folders, made];
  const entries = readdirSync(projectRoot);
  expect(entries.length).toBeGreaterThan(0);
  expect(entries.filter((name) => !known.some((pattern) => pattern.test(name)))).toEqual([]);
});
