import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../../app/_shared/styles/tokens.css', import.meta.url), 'utf8');

type Theme = 'light' | 'dark';
type Rgb = readonly [number, number, number];

function token(name: string, theme: Theme): string {
  const declared = new RegExp(`--${name}:\\s*([^;]+);`).exec(css)?.[1];
  if (!declared) throw new Error(`no token --${name}`);
  const pair = /^light-dark\((#[0-9a-f]{6}),\s*(#[0-9a-f]{6})\)$/.exec(declared);
  const value = pair ? (theme === 'light' ? pair[1] : pair[2]) : declared;
  if (!value || !/^#[0-9a-f]{6}$/.test(value))
    throw new Error(`--${name} is not a plain colour: ${declared}`);
  return value;
}

function rgb(hex: string): Rgb {
  const part = (from: number) => Number.parseInt(hex.slice(from, from + 2), 16);
  return [part(1), part(3), part(5)];
}

// source: published. W3C WCAG 2.2, definition of relative luminance (threshold 0.04045 as corrected there).
function luminance(colour: Rgb): number {
  const linear = colour.map((byte) => {
    const c = byte / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (linear[0] ?? 0) + 0.7152 * (linear[1] ?? 0) + 0.0722 * (linear[2] ?? 0);
}

// source: published. W3C WCAG 2.2, definition of contrast ratio: (L1 + 0.05) / (L2 + 0.05).
function contrast(a: string, b: string): number {
  const [x, y] = [luminance(rgb(a)), luminance(rgb(b))];
  return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
}

const PAPERS = ['desk', 'sheet', 'sheet-sunk'];
const WRITING = ['ink', 'ink-2', 'ink-3', 'verdigris', 'ochre', 'alarm'];
const THEMES: Theme[] = ['light', 'dark'];

describe('the contrast function itself', () => {
  // source: published. WCAG 2.2: black on white is 21:1.
  it('gives 21 for black on white', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  });
  // source: published. WebAIM's contrast article (from memory): #767676 on white is the lightest grey that passes 4.5:1.
  it('passes #767676 on white and fails #777777', () => {
    expect(contrast('#767676', '#ffffff')).toBeGreaterThanOrEqual(4.5);
    expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  });
});

// source: published. WCAG 2.2 success criteria 1.4.3 (text 4.5:1) and 1.4.11 (controls and graphics 3:1).
describe.each(THEMES)('%s theme', (theme) => {
  const of = (a: string, b: string) => contrast(token(a, theme), token(b, theme));

  it.each(PAPERS.flatMap((paper) => WRITING.map((pen) => [pen, paper] as const)))(
    'text --%s on --%s reaches 4.5',
    (pen, paper) => {
      expect(of(pen, paper)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it.each([
    ['on-ink', 'ink'],
    ['on-ink', 'ink-pressed'],
    ['verdigris', 'verdigris-pale'],
    ['ink', 'verdigris-pale'],
    ['ochre', 'ochre-pale'],
    ['ink', 'ochre-pale'],
    ['ink', 'steel-pale'],
    ['ink-2', 'steel-pale'],
    ['safety-white', 'safety-red'],
    ['safety-white', 'safety-green'],
    ['safety-white', 'safety-blue'],
    ['safety-black', 'safety-yellow'],
    ['safety-black', 'safety-orange'],
  ])('text --%s on --%s reaches 4.5', (pen, paper) => {
    expect(of(pen, paper)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(
    PAPERS.flatMap((paper) => [
      ['line-strong', paper],
      ['focus', paper],
    ]),
  )('graphics --%s on --%s reach 3', (pen = '', paper = '') => {
    expect(of(pen, paper)).toBeGreaterThanOrEqual(3);
  });
});
