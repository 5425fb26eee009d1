import { describe, expect, it } from 'vitest';
import { GO_FEELS, GRADES } from '@/lib/reading/reading';
import { CONE_LAND_MM, DEFAULT_READING_SETTINGS, TOOL_TEST_LAND_MM } from '@/lib/reading/reading-settings';

// source: published, from memory. ISO 3685: average flank land 0.3 mm; tighter for a sealing cone, common practice.
it('ends a blade at the land of a tool-life test, and a cone blade sooner', () => {
  expect(TOOL_TEST_LAND_MM).toBe(0.3);
  expect(CONE_LAND_MM).toBeLessThan(TOOL_TEST_LAND_MM);
});

describe('every plain word', () => {
  const { go, grade, notGoRunsOn } = DEFAULT_READING_SETTINGS;
  const shares = [...GO_FEELS.map((feel) => go[feel]), ...GRADES.map((word) => grade[word]), notGoRunsOn];

  it('is a share of the life with an honest error', () => {
    for (const { worn, sd } of shares) {
      expect(worn).toBeGreaterThanOrEqual(0);
      expect(worn).toBeLessThanOrEqual(1);
      expect(sd).toBeGreaterThanOrEqual(0.1);
    }
  });

  it('stands further along than the one before it', () => {
    const rises = (list: number[]): boolean => list.every((worn, i) => i === 0 || worn > (list[i - 1] ?? 0));
    expect(rises(GRADES.map((word) => grade[word].worn))).toBe(true);
    expect(rises(GO_FEELS.map((feel) => go[feel].worn))).toBe(true);
  });
});
