import { expect, it } from 'vitest';
import { faultFromMaster } from '@/lib/recall/fault-from-master';
import { faultMeaning } from '@/lib/recall/fault-meaning';

// source: hand. A ring is set until it drags on its plug: a plug too large leaves it too large. A micrometer that reads large
// makes a plug look large, or a setting small; which, depends on what was done.
it('a setting copies its master; a reading does not say which way', () => {
  expect(faultFromMaster('setting-plug', 'large')).toBe('large');
  expect(faultFromMaster('master-seat', 'small')).toBe('small');
  expect(faultFromMaster('setting-plug', 'unknown')).toBe('unknown');
  for (const role of ['micrometer', 'thread-wires', 'torque-wrench'] as const)
    expect(faultFromMaster(role, 'large')).toBe('unknown');
});

// source: identity. What a plug lets through is what the worse of its rings lets through.
it('the urgency of a plug is that of the worse of its two rings', () => {
  for (const direction of ['large', 'small', 'unknown'] as const) {
    const rings = (['go-ring', 'not-go-ring'] as const).map(
      (role) => faultMeaning({ role, direction: faultFromMaster('setting-plug', direction) }).urgency,
    );
    expect(faultMeaning({ role: 'setting-plug', direction }).urgency).toBe(Math.min(...rings));
  }
});
