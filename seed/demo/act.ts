import type { Env } from '../../db/ledger/ledger';
import type { Db } from '../../db/open';
import type { Actor } from '../../lib/access/actor';
import { type Action, type Permit, permit } from '../../lib/access/permit';
import { invariant } from '../../lib/invariant';
import type { Refusal, Result } from '../../lib/result';

/** What every entry carries from the device. */
interface Entered {
  readonly entryId: string;
  readonly deviceAtMs: number;
  readonly reason: string;
}

/** One thing that somebody of the demo shop did at one moment, as the command that it was. */
export interface Act {
  readonly atMs: number;
  /** Names the entry, once in the whole demo: its ID is made from it. */
  readonly name: string;
  readonly reason: string;
  run(stage: Stage): Result<unknown, Refusal>;
}

/** What an act runs on. */
interface Stage {
  readonly db: Db;
  readonly env: Env;
  readonly entered: Entered;
  /** The ID of an entry made before, by its name. */
  idOf(name: string): string;
}

type Command<A extends Action> = (
  db: Db,
  permit: Permit<A>,
  entered: Entered,
  env: Env,
  idOf: Stage['idOf'],
) => Result<unknown, Refusal>;

/** Makes an act of a command, with the leave of the one who does it. */
export function act<A extends Action>(
  when: { readonly atMs: number; readonly by: Actor; readonly name: string; readonly reason?: string },
  action: A,
  command: Command<A>,
): Act {
  const { atMs, by, name, reason = '' } = when;
  return {
    atMs,
    name,
    reason,
    run: ({ db, env, entered, idOf }) => {
      const leave = permit(by, action);
      return leave.ok ? command(db, leave.value, entered, env, idOf) : leave;
    },
  };
}

/** Plays the acts in the order of their moments. A refused act is a fault of the demo's story, and thrown. */
export function play(db: Db, acts: readonly Act[], newId: (name: string) => string): void {
  const ids = new Map<string, string>();
  const idOf = (name: string): string => {
    const id = ids.get(name);
    invariant(id !== undefined, `the demo names ${name} before it happened`);
    return id;
  };
  const inOrder = [...acts].sort((a, b) => a.atMs - b.atMs);
  for (const { atMs, name, reason, run } of inOrder) {
    invariant(!ids.has(name), `the demo names ${name} twice`);
    const entryId = newId(name);
    ids.set(name, entryId);
    const done = run({ db, env: { nowMs: atMs }, entered: { entryId, deviceAtMs: atMs, reason }, idOf });
    invariant(done.ok, done.ok ? '' : `the demo's ${name} was refused: ${done.refusal.sentence}`);
  }
}
