import { expect, it } from 'vitest';
import { askedFields, threadQuestion, wireQuestion } from '@/app/threads/_parts/thread-question';
import { bestWireMm } from '@/lib/thread/three-wire';

// source: hand. What stands in the address is what is worked out; what is left out is 2A and left hand.
it('reads a thread from the address', () => {
  expect(threadQuestion({})).toBeUndefined();
  expect(threadQuestion({ size: '9/16', tpi: '18' })).toEqual({
    ok: true,
    value: { sizeIn: { num: 9, den: 16 }, tpi: 18, threadClass: '2A', hand: 'LH' },
  });
  expect(threadQuestion({ size: '0.190', tpi: '32', class: '3A', hand: 'RH' })).toMatchObject({
    value: { sizeIn: { num: 19, den: 100 }, threadClass: '3A', hand: 'RH' },
  });
  expect(askedFields({ size: ['1', '2'] })).toEqual({ size: '', tpi: '', class: '2A', hand: 'LH' });
});

// source: hand. What is no thread names its field.
it.each([
  [{ size: 'nine', tpi: '18' }, 'size'],
  [{ size: '9/16', tpi: '' }, 'tpi'],
  [{ size: '9/16', tpi: '1e9' }, 'tpi'],
  [{ size: '8', tpi: '8' }, 'size'],
  [{ size: '1/4', tpi: '4' }, 'tpi'],
])('%o is refused', (asked, field) => {
  const question = threadQuestion(asked);
  expect(question?.ok === false && question.refusal.field).toBe(field);
});

const ABOUT = { tpi: 24, bestMm: bestWireMm(24), expectedMm: 9.753 };

// source: hand. 3/8-24 over its best wires is about 9.75 mm: a figure in the wrong unit is asked about.
it('reads wires and a measurement, and doubts their units', () => {
  expect(wireQuestion({}, ABOUT)).toEqual({
    ok: true,
    value: { wireMm: ABOUT.bestMm, overWiresMm: undefined },
  });
  expect(wireQuestion({ wire: '0.024', over: '9.7', overUnit: 'mm' }, ABOUT)).toMatchObject({
    value: { wireMm: expect.closeTo(0.6096, 9), overWiresMm: 9.7 },
  });
  const refusal = (asked: Record<string, string>) => {
    const question = wireQuestion(asked, ABOUT);
    return question.ok ? undefined : question.refusal;
  };
  expect(refusal({ over: '9.7' })?.meant).toEqual({ figure: '9.7', unit: 'mm' });
  expect(refusal({ wire: '0.61', wireUnit: 'in' })?.meant).toEqual({ figure: '0.61', unit: 'mm' });
  expect(refusal({ wire: '0.1' })?.field).toBe('wire');
  expect(refusal({ over: '0.6' })?.code).toBe('far');
});
