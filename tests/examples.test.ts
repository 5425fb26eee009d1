import { describe, expect, it } from 'vitest';
import { readSources } from './support/source-files';

/** Every `@example f(x) // => value` of lib is run, with the exports of its own file in scope. */
const modules = import.meta.glob<Record<string, unknown>>('../lib/**/*.ts');
const examples = [...readSources(['lib'])].flatMap(([path, text]) =>
  examplesOf(text).map((line) => ({ path, line })),
);

/** The expressions marked @example, one line each. */
function examplesOf(text: string): string[] {
  return [...text.matchAll(/^\s*\/?\*+\s*@example[ \t]+(.*?)(?:\s*\*\/)?$/gm)].map(([, line = '']) => line);
}

function evaluate(expression: string, scope: Record<string, unknown>): unknown {
  const names = Object.keys(scope);
  return new Function(...names, `'use strict'; return (${expression});`)(...names.map((name) => scope[name]));
}

/** Equal, numbers within 1e-12 of the larger (or of 1e-12 itself when nought is expected). */
function agrees(got: unknown, want: unknown): boolean {
  if (typeof got === 'number' && typeof want === 'number') {
    return Object.is(got, want) || Math.abs(got - want) <= 1e-12 * (want === 0 ? 1 : Math.abs(want));
  }
  if (typeof got !== 'object' || typeof want !== 'object' || got === null || want === null)
    return got === want;
  const keys = Object.keys(want);
  if (keys.length !== Object.keys(got).length || Array.isArray(got) !== Array.isArray(want)) return false;
  return keys.every((key) =>
    agrees((got as Record<string, unknown>)[key], (want as Record<string, unknown>)[key]),
  );
}

describe('the examples in lib', () => {
  it('were found, each with a value', () => {
    expect(examples.length).toBeGreaterThan(0);
    const written = [...readSources(['lib']).values()].join('\n').match(/@example/g) ?? [];
    expect(examples.length).toBe(written.length);
    expect(examples.filter(({ line }) => !/ \/\/ => \S/.test(line))).toEqual([]);
  });

  it.each(examples)('$path: $line', async ({ path, line }) => {
    const [expression = '', value = ''] = line.split(' // => ');
    const scope = await modules[`../${path}`]?.();
    expect(scope, path).toBeDefined();
    const got = evaluate(expression, scope ?? {});
    expect(agrees(got, evaluate(value, {})), `gives ${JSON.stringify(got)}`).toBe(true);
  });
});

describe('the checker of examples', () => {
  it('finds the line in a doc block, and reads a doc block of one line', () => {
    expect(examplesOf('/**\n * Adds.\n * @example add(1, 2) // => 3\n */')).toEqual(['add(1, 2) // => 3']);
    expect(examplesOf('/** @example add(1, 2) // => 3 */')).toEqual(['add(1, 2) // => 3']);
  });

  it('tells a right value from a wrong one', () => {
    const scope = { third: () => 1 / 3, pair: () => ({ a: 1, b: [true, 'x'] }) };
    expect(agrees(evaluate('third()', scope), evaluate('0.3333333333333333', {}))).toBe(true);
    expect(agrees(evaluate('third()', scope), evaluate('0.33333333333', {}))).toBe(false);
    expect(agrees(evaluate('pair()', scope), evaluate('{ a: 1, b: [true, "x"] }', {}))).toBe(true);
    expect(agrees(evaluate('pair()', scope), evaluate('{ a: 1, b: [true] }', {}))).toBe(false);
    expect(agrees(Number.NaN, 1)).toBe(false);
  });
});
