import { afterEach, describe, expect, it, vi } from 'vitest';
import { inTurn, undoIsPossible, watchUndo } from '@/app/bench/_offline/across-pages';
import { stubPageLocks } from '../../support/page-locks';

afterEach(() => vi.unstubAllGlobals());
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Runs three works at once and says how many were under way together, at most. */
async function together(patienceMs?: number): Promise<number> {
  let open = 0;
  let most = 0;
  const work = async () => {
    open += 1;
    most = Math.max(most, open);
    await pause(20);
    open -= 1;
  };
  await Promise.all([1, 2, 3].map(() => inTurn(work, patienceMs)));
  return most;
}

describe('taking turns', () => {
  // source: hand. Three pages of one browser at once: one works at a time.
  it('lets one page work at a time', async () => {
    stubPageLocks();
    expect(await together()).toBe(1);
  });

  // source: hand. Plain http has no locks, and a page put to sleep never gives its own back: what waits must go all the same.
  it('works without locks, and does not wait for ever', async () => {
    vi.stubGlobal('navigator', {});
    expect(await together()).toBe(3);
    stubPageLocks();
    expect(await together(5)).toBeGreaterThan(1);
  });

  it('gives back what the work gave, and throws what it threw, without doing it twice', async () => {
    stubPageLocks();
    expect(await inTurn(async () => 7)).toBe(7);
    let times = 0;
    const failing = inTurn(async () => {
      times += 1;
      throw new Error('no network');
    });
    await expect(failing).rejects.toThrow('no network');
    expect(times).toBe(1);
  });
});

describe('Undo in other pages', () => {
  // source: hand. Two benches open: possible until the second is left.
  it('is possible as long as any bench is open', async () => {
    stubPageLocks();
    expect(await undoIsPossible()).toBe(false);
    const leave = [watchUndo(), watchUndo()];
    expect(await undoIsPossible()).toBe(true);
    leave[0]?.();
    await pause(0);
    expect(await undoIsPossible()).toBe(true);
    leave[1]?.();
    await pause(0);
    expect(await undoIsPossible()).toBe(false);
  });

  it('is taken for possible where nobody can know', async () => {
    vi.stubGlobal('navigator', {});
    expect(await undoIsPossible()).toBe(true);
    expect(() => watchUndo()()).not.toThrow();
  });
});
