import 'server-only';
import { type ChildProcess, spawn } from 'node:child_process';
import { constants, setPriority } from 'node:os';
import { shopDb, shopName } from '@/db/client';
import { dataVersion } from '@/db/queries/entries';
import type { ShopComparisons } from '@/lib/outlook/compare-groups';
import type { ShopBacktest } from '@/lib/outlook/shop-backtest';

/** What takes longer to work out than anybody waits for a page, and what comes of it. */
interface Studies {
  readonly backtest: ShopBacktest;
  readonly comparisons: ShopComparisons;
}

/** How a study stands. `found` may be of an older version while a new one is being worked out. */
export interface StudyState<T> {
  readonly found: T | undefined;
  readonly working: boolean;
  /** The last run at this version failed; another is tried when the log moves. */
  readonly failed: boolean;
}

interface Kept {
  readonly found?: unknown;
  /** Shop and version that it was last worked out at, and whether it could be. */
  readonly tried?: string;
  readonly failed?: boolean;
}

interface Keeper {
  readonly kept: Map<string, Kept>;
  child: ChildProcess | undefined;
}

const KEY = Symbol.for('edgekeep.studies');
const holder = globalThis as { [KEY]?: Keeper };

/**
 * A study of the shop's whole log: run in a process of its own, one at a time, and kept until the log moves. Asking
 * starts it where needed and never waits; whoever asks while another study runs is served when that one is done.
 */
export function studyState<N extends keyof Studies>(name: N): StudyState<Studies[N]> {
  const shop = shopName();
  const now = `${shop} ${dataVersion(shopDb())}`;
  const keeper = keeperOf();
  const key = `${shop} ${name}`;
  const kept = keeper.kept.get(key) ?? {};
  const isCurrent = kept.tried === now;
  if (!isCurrent && keeper.child === undefined) start(keeper, { key, shop, name, now });
  return {
    found: kept.found as Studies[N] | undefined,
    working: !isCurrent,
    failed: isCurrent && kept.failed === true,
  };
}

function keeperOf(): Keeper {
  const keeper = holder[KEY] ?? { kept: new Map(), child: undefined };
  holder[KEY] = keeper;
  return keeper;
}

function start(
  keeper: Keeper,
  { key, shop, name, now }: Record<'key' | 'shop' | 'name' | 'now', string>,
): void {
  const child = spawn(
    /* turbopackIgnore: true */ process.execPath,
    ['--import', 'tsx', `db/${name}.ts`, '--json', '--shop', shop],
    {
      cwd: process.cwd(),
      env: { ...process.env, NODE_OPTIONS: '' },
      stdio: ['ignore', 'pipe', 'ignore'],
    },
  );
  const stop = () => child.kill('SIGKILL');
  process.once('exit', stop);
  keeper.child = child;
  child.on('spawn', () => giveWay(child));
  let output = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    output += text;
  });
  const done = (code: number | null) => {
    if (keeper.child !== child) return;
    process.off('exit', stop);
    keeper.child = undefined;
    const found = code === 0 ? parsed(output) : undefined;
    const before = keeper.kept.get(key)?.found;
    keeper.kept.set(key, { found: found ?? before, tried: now, failed: found === undefined });
  };
  child.on('error', () => done(null));
  child.on('close', done);
}

/** The server answers first: a study may take its time. */
function giveWay({ pid }: ChildProcess): void {
  try {
    if (pid !== undefined) setPriority(pid, constants.priority.PRIORITY_BELOW_NORMAL);
  } catch {
    // It has ended already, or the system does not allow it: the study is only less polite.
  }
}

function parsed(output: string): unknown {
  try {
    return JSON.parse(output);
  } catch {
    return undefined;
  }
}
