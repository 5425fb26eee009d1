import { expect, it } from 'vitest';
import { invariant } from '@/lib/invariant';

// source: hand. What holds passes in silence; what does not is a bug, named.
it('throws on what does not hold, and only then', () => {
  for (const held of [true, 1, 'x', {}]) expect(() => invariant(held, 'held')).not.toThrow();
  for (const broken of [false, 0, '', null, undefined, Number.NaN])
    expect(() => invariant(broken, 'an end costs exposure')).toThrow(
      'invariant broken: an end costs exposure',
    );
});
