import { expect, it } from 'vitest';
import * as words from '@/lib/shop/vocabulary';

it('every code has a label of its own', () => {
  for (const [codes, label] of [
    [words.SERVICES, words.SERVICE_LABEL],
    [words.HANDS, words.HAND_LABEL],
    [words.ROLES, words.ROLE_LABEL],
    [words.TOOL_STATES, words.TOOL_STATE_LABEL],
  ] as const) {
    expect(Object.keys(label).sort()).toEqual([...codes].sort());
    expect(new Set(Object.values(label)).size).toBe(codes.length);
  }
});

it('only wear is evidence of wear, and every cause is evidence of something', () => {
  const worn = words.END_CAUSES.filter((cause) => cause.end === 'worn').map((cause) => cause.code);
  // source: hand. Worn out, and broken because worn out; the rest is accident or choice.
  expect(worn).toEqual(['worn', 'teeth-broken-worn']);
  for (const { end } of words.END_CAUSES) expect(words.EDGE_ENDS).toContain(end);
});

it('what wears is not kept under calibration, and what is calibrated does not cut', () => {
  for (const kind of words.EDGE_KINDS) expect(words.CALIBRATED_ROLES).not.toContain(kind);
});
