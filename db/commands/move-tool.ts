import type { Permit } from '../../lib/access/permit';
import type { Refusal, Result } from '../../lib/result';
import { refuse } from '../../lib/result';
import type { MoveTool } from '../../lib/shop/command-input';
import type { Env, Recorded } from '../ledger/ledger';
import type { Db } from '../open';
import { recordToolEntry } from './tool-entry';

/** Moves a tool: out for regrind or calibration, into quarantine, lost, found, scrapped. Needs a reason in words. */
export function moveTool(
  db: Db,
  permit: Permit<'move-tool'>,
  input: MoveTool,
  env: Env,
): Result<Recorded, Refusal> {
  const { to, backOnDay } = input;
  if ((to === 'quarantined' || to === 'scrapped' || to === 'lost') && input.reason === '') {
    return refuse('reason', 'Say why, in a few words.', 'reason');
  }
  return recordToolEntry(db, permit, input, env, { kind: 'tool-moved', payload: { to, backOnDay } });
}
