import { describe, expect, it } from 'vitest';
import {
  END_CAUSE_WORDS,
  HAND_WORDS,
  REJECT_WORDS,
  ROLE_WORDS,
  readWord,
  SERVICE_WORDS,
  STATE_WORDS,
  YES_NO_WORDS,
} from '@/lib/import/word-list';
import {
  END_CAUSES,
  REJECT_CAUSES,
  ROLE_LABEL,
  ROLES,
  TOOL_STATE_LABEL,
  TOOL_STATES,
} from '@/lib/shop/vocabulary';

describe('readWord', () => {
  it('knows every code and every label of the shop’s words', () => {
    for (const role of ROLES) {
      expect(readWord(ROLE_WORDS, role)).toBe(role);
      expect(readWord(ROLE_WORDS, ROLE_LABEL[role]), role).toBe(role);
    }
    for (const state of TOOL_STATES) {
      expect(readWord(STATE_WORDS, state)).toBe(state);
      expect(readWord(STATE_WORDS, TOOL_STATE_LABEL[state])).toBe(state);
    }
    for (const { code, label } of END_CAUSES) {
      expect([readWord(END_CAUSE_WORDS, code), readWord(END_CAUSE_WORDS, label)]).toEqual([code, code]);
    }
    for (const { code, label } of REJECT_CAUSES) {
      expect([readWord(REJECT_WORDS, code), readWord(REJECT_WORDS, label)]).toEqual([code, code]);
    }
  });

  it.each([
    [ROLE_WORDS, 'GO gage', 'go-ring'],
    [ROLE_WORDS, 'No-Go ring', 'not-go-ring'],
    [ROLE_WORDS, 'Cone Gage', 'cone-gauge'],
    [SERVICE_WORDS, 'High Pressure', 'high'],
    [HAND_WORDS, 'left-hand', 'LH'],
    [YES_NO_WORDS, 'TRUE', 'yes'],
    [YES_NO_WORDS, 'x', 'yes'],
    [YES_NO_WORDS, '0', 'no'],
  ])('reads what shops write', (list, text, code) => {
    expect(readWord<string>(list, text)).toBe(code);
  });

  it('knows nothing else', () => {
    for (const text of ['', '__proto__', 'constructor', 'spoon'])
      expect(readWord(ROLE_WORDS, text)).toBeUndefined();
  });
});
