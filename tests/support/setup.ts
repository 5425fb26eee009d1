import { afterEach, beforeEach, vi } from 'vitest';

/** Noise fails tests: an unexpected console.error or console.warn is a fault, not a remark. */
beforeEach(() => {
  for (const level of ['error', 'warn'] as const) {
    vi.spyOn(console, level).mockImplementation((...parts: unknown[]) => {
      throw new Error(`unexpected console.${level}: ${parts.map(String).join(' ')}`);
    });
  }
});

afterEach(() => {
  vi.restoreAllMocks();
});
