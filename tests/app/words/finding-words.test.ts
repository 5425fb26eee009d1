import { expect, it } from 'vitest';
import { findingWords } from '@/app/_shared/words/finding-words';

// source: hand. Each finding as it is read out; a length converted from inches carries no tail.
it('says what was seen', () => {
  expect(findingWords({ method: 'flank-land', landMm: 0.1 })).toBe('wear land 0.1 mm');
  const pitch = { pitchDiameterMm: 8.999_999_99, minMm: 8.9, maxMm: 9.1, instrument: 'wires' } as const;
  expect(findingWords({ method: 'pitch-diameter', ...pitch })).toBe('pitch diameter 9 mm');
  const overWires = { overWiresMm: 9.704, wireMm: 0.611 };
  expect(findingWords({ method: 'pitch-diameter', ...pitch, overWires })).toBe(
    'pitch diameter 9 mm, 9.704 mm over wires of 0.611 mm',
  );
  expect(findingWords({ method: 'ring', go: 'tight', notGoTurns: null })).toBe('GO ring runs on tight');
  expect(findingWords({ method: 'ring', go: 'free', notGoTurns: 1 })).toBe(
    'GO ring runs on freely, NOT GO on by 1 turn',
  );
  expect(findingWords({ method: 'grade', grade: 'at-limit' })).toBe('at its limit');
});
