import 'server-only';
import { servedShop } from '@/db/client';
import { dataVersion } from '@/db/queries/entries';
import { readShopFacts } from '@/db/queries/shop-facts';
import { openSnapshot, type Snapshot } from '@/db/queries/snapshot';
import { computeOutlook, type Outlook } from '@/lib/outlook/outlook';
import { unpackOutlook } from '@/lib/outlook/outlook-data';
import { nowMs, today } from '../clock';
import { type FiguresProcess, figuresProcess } from './figures-process';
import { type KeptView, retire, settleSoon } from './kept-view';

/** Keeps the figures of the shop being served, and has new ones worked out. One to a server process. */
export interface FiguresKeeper {
  readonly process: FiguresProcess;
  kept: KeptView | undefined;
  /** What is being worked out; settles when it is there, or when it came to nothing. */
  job: Promise<void> | undefined;
  /** Times in a row that the figures process came to nothing. */
  failures: number;
  /** For the end of the server: ends the process and lets go of the record. */
  end(): Promise<void>;
}

/** After so many failures in a row the server works figures out itself, rather than show none. */
const FAILURES_MOST = 2;

const KEY = Symbol.for('edgekeep.figures');
const holder = globalThis as { [KEY]?: FiguresKeeper };

export function figuresKeeper(): FiguresKeeper {
  const known = holder[KEY];
  if (known !== undefined) return known;
  const process = figuresProcess();
  const keeper: FiguresKeeper = {
    ...{ process, kept: undefined, job: undefined, failures: 0 },
    end: async () => {
      await process.end();
      keeper.kept?.record.close();
      keeper.kept = undefined;
    },
  };
  holder[KEY] = keeper;
  return keeper;
}

/** These figures if they are of the shop that is served now, of whatever moment. */
export function ofShop(view: KeptView | undefined): KeptView | undefined {
  return view?.of === servedShop().db ? view : undefined;
}

/** Whether these figures are of this very moment. */
export function isCurrent(view: KeptView): boolean {
  return view.version === dataVersion(view.of) && view.today === today();
}

/**
 * Has the figures of this moment worked out, unless some are being worked out already: then those come first. Rejects where
 * the server itself could not work them out (a bug).
 */
export function workOut(keeper: FiguresKeeper, path: string): Promise<void> {
  if (keeper.job === undefined) {
    const job = work(keeper, path).finally(() => {
      keeper.job = undefined;
    });
    job.catch(() => undefined);
    keeper.job = job;
  }
  return keeper.job;
}

async function work(keeper: FiguresKeeper, path: string): Promise<void> {
  const of = servedShop().db;
  const record = openSnapshot(path);
  const day = today();
  const readAtMs = nowMs();
  try {
    const outlook = await outlookOf(keeper, record, { path, day });
    if (outlook === undefined) return record.close();
    const before = keeper.kept;
    const view = { path, of, version: record.version, today: day, readAtMs, outlook, record };
    keeper.kept = view;
    if (before !== undefined) retire(before.record);
    settleSoon((known) => keeper.kept === known && keeper.job === undefined, view);
  } catch (error) {
    record.close();
    throw error;
  }
}

/** Undefined: the process died, or the record moved before it could read it. Whoever wants figures asks again. */
async function outlookOf(
  keeper: FiguresKeeper,
  record: Snapshot,
  { path, day }: { path: string; day: string },
): Promise<Outlook | undefined> {
  if (keeper.failures >= FAILURES_MOST) {
    keeper.failures = 0;
    return computeOutlook(readShopFacts(record.db, { today: day }));
  }
  try {
    const answer = await keeper.process.ask({ path, version: record.version, today: day });
    keeper.failures = 0;
    return answer.moved ? undefined : unpackOutlook(answer.data);
  } catch (error) {
    keeper.failures += 1;
    console.error(`Figures are worked out anew: ${error instanceof Error ? error.message : error}`);
    return undefined;
  }
}
