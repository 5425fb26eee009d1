import type { Permit } from '../../lib/access/permit';
import type { Refusal, Result } from '../../lib/result';
import type { OpenFluid, ReadFluidLevel } from '../../lib/shop/command-input';
import type { Env, Recorded } from '../ledger/ledger';
import type { Db } from '../open';
import { recordToolEntry } from './tool-entry';

/** Opens a bottle: its opened life begins. */
export function openFluid(
  db: Db,
  permit: Permit<'keep-fluid'>,
  input: OpenFluid,
  env: Env,
): Result<Recorded, Refusal> {
  const { onDay } = input;
  return recordToolEntry(db, permit, input, env, { kind: 'fluid-opened', payload: { onDay } });
}

/** Writes down how much is left in a bottle. */
export function readFluidLevel(
  db: Db,
  permit: Permit<'keep-fluid'>,
  input: ReadFluidLevel,
  env: Env,
): Result<Recorded, Refusal> {
  const { levelMl, onDay } = input;
  return recordToolEntry(db, permit, input, env, { kind: 'fluid-level-read', payload: { levelMl, onDay } });
}
