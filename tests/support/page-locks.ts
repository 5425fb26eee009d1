import { vi } from 'vitest';

interface Ask {
  readonly name: string;
  readonly mode: 'exclusive' | 'shared';
  readonly grant: () => void;
}

/**
 * What every page of one browser shares: locks by name, granted in the order asked, after the Web Locks API (W3C). Node has them
 * from 24.5 only; the browser tests run against the real ones.
 */
export function stubPageLocks(): void {
  let held: Ask[] = [];
  let asks: Ask[] = [];
  const grant = () => {
    for (const ask of [...asks]) {
      const others = [...held, ...asks.slice(0, asks.indexOf(ask))].filter(({ name }) => name === ask.name);
      if (others.some(({ mode }) => mode === 'exclusive' || ask.mode === 'exclusive')) continue;
      asks = asks.filter((one) => one !== ask);
      held.push(ask);
      ask.grant();
    }
  };
  const request = async (name: string, options: LockOptions, work: () => Promise<unknown>) => {
    let mine: Ask | undefined;
    await new Promise<void>((resolve, reject) => {
      mine = { name, mode: options.mode ?? 'exclusive', grant: resolve };
      asks.push(mine);
      options.signal?.addEventListener('abort', () => {
        asks = asks.filter((one) => one !== mine);
        reject(options.signal?.reason);
        grant();
      });
      grant();
    });
    try {
      return await work();
    } finally {
      held = held.filter((one) => one !== mine);
      grant();
    }
  };
  const query = async () => ({
    held: held.map(({ name }) => ({ name })),
    pending: asks.map(({ name }) => ({ name })),
  });
  vi.stubGlobal('navigator', { locks: { request, query } });
}
