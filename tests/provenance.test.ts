import { describe, expect, it } from 'vitest';
import { readSources } from './support/source-files';

/**
 * Where an expected value comes from stands beside it: `source: <kind>. <detail>`. In tests/external every test has such
 * a line inside it, in the comment directly above it, above its enclosing top-level block, or above the table it runs over.
 */
const kinds = [
  'published',
  'published, from memory',
  'other-software',
  'formula',
  'identity',
  'hand',
  'common practice, no source',
];
const sourceLine = new RegExp(`source: (?:${kinds.join('|')})\\. \\S`);
const anySource = /^\s*(?:\/\/|\/?\*+)\s*source:\s*([^.\n]*)/gm;
const testStart = /^[ \t]*(?:it|test)(?:\.\w+)*\(/;

interface Block {
  readonly lead: string;
  readonly body: string;
}

/** The top-level statements of a file, each with the comment lines directly above it. */
function topLevelBlocks(text: string): Block[] {
  const blocks: { lead: string; body: string }[] = [];
  let lead = '';
  for (const line of text.split('\n')) {
    const current = blocks.at(-1);
    if (/^(?:\/\/|\/\*| \*)/.test(line)) lead += `${line}\n`;
    else if (/^[A-Za-z]/.test(line)) {
      blocks.push({ lead, body: `${line}\n` });
      lead = '';
    } else if (line.trim() === '') lead = '';
    else if (current) current.body += `${line}\n`;
  }
  return blocks;
}

function unsourcedTests(text: string): string[] {
  const blocks = topLevelBlocks(text);
  const tables = blocks
    .filter(({ lead }) => sourceLine.test(lead))
    .flatMap(({ body }) => /^(?:export )?const (\w+)/.exec(body)?.[1] ?? []);
  return blocks.flatMap(({ lead, body }) => {
    const overTable = tables.some((name) => new RegExp(`\\.each\\(\\s*${name}\\b|of ${name}\\b`).test(body));
    if (sourceLine.test(lead) || overTable) return [];
    return testsIn(body)
      .filter((test) => !sourceLine.test(test))
      .map((test) => (test.match(/.*(?:it|test)\S*\(.*/)?.[0] ?? test).trim());
  });
}

/** The tests of a block, each with the comment lines directly above it, up to where the next one begins. */
function testsIn(body: string): string[] {
  const lines = body.split('\n');
  const isComment = (at: number) => /^\s*\/\//.test(lines[at] ?? '');
  const starts = lines.flatMap((line, at) => {
    if (!testStart.test(line)) return [];
    let start = at;
    while (isComment(start - 1)) start -= 1;
    return [start];
  });
  return starts.map((start, index) => lines.slice(start, starts[index + 1]).join('\n'));
}

const external = [...readSources(['tests'])].filter(
  ([path]) => path.startsWith('tests/external/') && path.endsWith('.test.ts'),
);

describe('provenance', () => {
  it('stands beside every test against the outside', () => {
    expect(external.length).toBeGreaterThan(0);
    const tests = external.flatMap(([, text]) => topLevelBlocks(text).flatMap(({ body }) => testsIn(body)));
    expect(tests.length).toBeGreaterThanOrEqual(external.length);
    expect(
      external.flatMap(([path, text]) => unsourcedTests(text).map((test) => `${path}: ${test}`)),
    ).toEqual([]);
  });

  it('is of a known kind in every test', () => {
    const found = [...readSources(['tests'])].flatMap(([path, text]) =>
      [...text.matchAll(anySource)].map(([, kind = '']) => `${path}: ${kind}`),
    );
    expect(found.length).toBeGreaterThan(0);
    expect(found.filter((line) => !kinds.includes(line.slice(line.indexOf(': ') + 2)))).toEqual([]);
  });

  it('is found missing by the checker, and found where it stands', () => {
    const source = '// source: hand. 1 + 1 = 2.';
    expect(unsourcedTests("it('a', () => {\n  expect(1).toBe(1);\n});")).toEqual(["it('a', () => {"]);
    expect(unsourcedTests("// source: our own output.\nit('a', () => {});")).toHaveLength(1);
    expect(unsourcedTests("// source: hand.\nit('a', () => {});")).toHaveLength(1);
    expect(unsourcedTests(`${source}\n\nit('a', () => {});`)).toHaveLength(1);
    expect(unsourcedTests(`${source}\nit('a', () => {});`)).toEqual([]);
    expect(
      unsourcedTests(`describe('x', () => {\n  ${source}\n  it('a', () => {});\n  it('b', () => {});\n});`),
    ).toEqual(["it('b', () => {});"]);
    expect(
      unsourcedTests(`describe('x', () => {\n  it('a', () => {\n    ${source}\n    expect(2);\n  });\n});`),
    ).toEqual([]);
    expect(unsourcedTests(`${source}\nconst rows = [\n  [1],\n];\nit.each(rows)('a', () => {});`)).toEqual(
      [],
    );
    expect(unsourcedTests("const rows = [\n  [1],\n];\nit.each(rows)('a', () => {});")).toHaveLength(1);
  });
});
