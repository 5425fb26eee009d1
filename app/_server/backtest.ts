import 'server-only';
import { type ChildProcess, spawn } from 'node:child_process';
import { shopDb, shopName } from '@/db/client';
import { dataVersion } from '@/db/queries/entries';
import type { ShopBacktest } from '@/lib/outlook/shop-backtest';

/** How the replay of the shop's log stands. `found` may be of an older version while a new one is being worked out. */
export interface BacktestState {
  readonly found: ShopBacktest | undefined;
  readonly working: boolean;
  /** The last run of this version failed; another is tried when the log moves. */
  readonly failed: boolean;
}

interface Keeper {
  shop: string;
  /** Version that `found` belongs to, and that which failed. */
  foundAt?: number;
  found?: ShopBacktest | undefined;
  failedAt?: number;
  child?: ChildProcess | undefined;
}

const KEY = Symbol.for('edgekeep.backtest');
const holder = globalThis as { [KEY]?: Keeper };

/**
 * The replay of the whole log, which takes longer than anybody waits for a page: run in a process of its own, one at a
 * time, at low priority to none, kept until the log moves. Asking starts it where needed and never waits.
 */
export function shopBacktestState(): BacktestState {
  const shop = shopName();
  const version = dataVersion(shopDb());
  const known = holder[KEY];
  if (known !== undefined && known.shop !== shop) known.child?.kill('SIGKILL');
  const keeper = known?.shop === shop ? known : { shop };
  holder[KEY] = keeper;
  const isCurrent = keeper.foundAt === version || keeper.failedAt === version;
  if (!isCurrent && keeper.child === undefined) start(keeper, version);
  return {
    found: keeper.found,
    working: keeper.child !== undefined,
    failed: keeper.failedAt === version && keeper.child === undefined,
  };
}

function start(keeper: Keeper, version: number): void {
  const script = ['db', 'backtest.ts'].join('/');
  const child = spawn(process.execPath, ['--import', 'tsx', script, '--json'], {
    cwd: process.cwd(),
    env: { ...process.env, NODE_OPTIONS: '' },
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  keeper.child = child;
  const stop = () => child.kill('SIGKILL');
  process.once('exit', stop);
  let output = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    output += text;
  });
  const done = (code: number | null) => {
    if (keeper.child !== child) return;
    process.off('exit', stop);
    keeper.child = undefined;
    const found = code === 0 ? readReport(output) : undefined;
    if (found === undefined) keeper.failedAt = version;
    else [keeper.found, keeper.foundAt] = [found, version];
  };
  child.on('error', () => done(null));
  child.on('close', done);
}

function readReport(output: string): ShopBacktest | undefined {
  try {
    return JSON.parse(output) as ShopBacktest;
  } catch {
    return undefined;
  }
}
