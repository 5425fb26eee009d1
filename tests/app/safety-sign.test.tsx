import { readFileSync } from 'node:fs';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { SIGN_OF_CODE } from '@/app/_shared/cautions/sign-of-code';
import { GhsPictogram } from '@/app/_shared/ui/ghs-pictogram';
import { SafetySign } from '@/app/_shared/ui/safety-sign';
import { SIGN, type SignName } from '@/app/_shared/ui/safety-sign-drawings';
import { GHS_PICTOGRAMS } from '@/lib/shop/ghs';

const KIND = { M: 'must', W: 'beware', P: 'must-not', E: 'safe' } as const;
const FIELD = {
  must: 'safety-blue',
  beware: 'safety-yellow',
  'must-not': 'safety-red',
  safe: 'safety-green',
};

// source: published. ISO 7010 letters: M mandatory, W warning, P prohibition, E safe condition; ISO 3864-1: blue disc, yellow
// triangle with black, red ring with bar, green square.
it.each(Object.entries(SIGN))('%s has the shape and colour of its letter', (name, { iso, kind, title }) => {
  expect(kind).toBe(KIND[iso[0] as keyof typeof KIND]);
  const svg = renderToStaticMarkup(<SafetySign name={name as SignName} />);
  expect(svg).toContain(`var(--${FIELD[kind]})`);
  expect(svg).toContain(`<title>${title}</title>`);
  if (kind === 'must' || kind === 'must-not') expect(svg).toContain('<circle cx="32" cy="32" r="31"');
});

// source: published. Registered numbers of ISO 7010 (M004, M009, M011, M022 published; the others from memory).
it('every sign that a caution names is the one of that number', () => {
  for (const [code, name] of Object.entries(SIGN_OF_CODE)) expect(SIGN[name].iso).toBe(code);
});

// source: published. ISO 3864-1: red covers at least 35 % of a prohibition sign; ring and bar of our drawing, by their geometry.
it('red covers more than 35 % of a prohibition sign', () => {
  const source = readFileSync('app/_shared/ui/safety-sign.tsx', 'utf8');
  expect(source).toContain('a27.5 27.5');
  expect(source).toContain('strokeWidth="6"');
  const ring = Math.PI * (30.5 ** 2 - 24.5 ** 2);
  const bar = 2 * 24.5 * 6;
  expect((ring + bar) / (Math.PI * 31 ** 2)).toBeGreaterThan(0.35);
});

// source: published. UN GHS: black symbol on white in a red frame, a square set on its point.
it.each(GHS_PICTOGRAMS)('$code is a red square on its point with its name', ({ code, name }) => {
  const svg = renderToStaticMarkup(<GhsPictogram code={code} />);
  expect(svg).toContain('M50 5 95 50 50 95 5 50Z');
  expect(svg).toContain('stroke="var(--safety-red)"');
  expect(svg).toContain('fill="#fff"');
  expect(svg).toContain(`<title>${name}</title>`);
});
