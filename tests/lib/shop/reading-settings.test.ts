import { expect, it } from 'vitest';
import { DEFAULT_READING_SETTINGS } from '@/lib/reading/reading-settings';
import { ReadingSettingsSchema, SetReadingSettingsInput } from '@/lib/shop/reading-settings';

// source: identity. What a shop starts from is what the door takes.
it('takes the defaults as they are', () => {
  expect(ReadingSettingsSchema.parse(DEFAULT_READING_SETTINGS)).toEqual(DEFAULT_READING_SETTINGS);
});

// source: hand. An instrument without an error would overrule everything else that is known of the edge.
it('takes no reading for certain', () => {
  for (const change of [{ landSdMm: 0 }, { courseSd: 0 }, { landLimitMm: -1 }])
    expect(ReadingSettingsSchema.safeParse({ ...DEFAULT_READING_SETTINGS, ...change }).success).toBe(false);
  const bare = { settings: DEFAULT_READING_SETTINGS };
  expect(SetReadingSettingsInput.safeParse(bare).success).toBe(false);
});
