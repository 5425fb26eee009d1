import type { Permit } from '../../lib/access/permit';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { OpenFluid, ReadFluidLevel } from '../../lib/shop/command-input';
import type { CountDrops, DisposeFluid, ExtendFluid } from '../../lib/shop/fluid-input';
import { fluidLotId } from '../../lib/shop/fluid-lot';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
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

/** Writes down a count of drops: the bottle's own drops to the millilitre from now on. */
export function countDrops(
  db: Db,
  permit: Permit<'keep-fluid'>,
  input: CountDrops,
  env: Env,
): Result<Recorded, Refusal> {
  const { drops, volumeMl, onDay } = input;
  const payload = { drops, volumeMl, onDay };
  return recordToolEntry(db, permit, input, env, { kind: 'fluid-drops-counted', payload });
}

/** Lengthens a bottle's life after an inspection: by a named role, and only where the lot's shelf life may be extended. */
export function extendFluid(
  db: Db,
  permit: Permit<'extend-fluid'>,
  input: ExtendFluid,
  env: Env,
): Result<Recorded, Refusal> {
  const { onDay, untilDay, inspection } = input;
  const payload = { onDay, untilDay, inspection, shelfLife: 'extendable' as const };
  return recordToolEntry(db, permit, input, env, { kind: 'fluid-extended', payload }, checkExtendable);
}

/** Ends a bottle, with the transfer note of what was left in it. */
export function disposeFluid(
  db: Db,
  permit: Permit<'keep-fluid'>,
  input: DisposeFluid,
  env: Env,
): Result<Recorded, Refusal> {
  const { onDay, how, transferNote, volumeMl } = input;
  const payload = { onDay, how, transferNote, volumeMl };
  return recordToolEntry(db, permit, input, env, { kind: 'fluid-disposed', payload });
}

function checkExtendable(ledger: Ledger, toolId: string): Result<null, Refusal> {
  const tool = ledger.find('tool', toolId);
  if (tool === undefined || tool.role !== 'fluid') return ok(null);
  const lot = ledger.find('fluid-lot', fluidLotId(tool));
  if (lot === undefined)
    return refuse(
      'lot',
      `Nothing is written down of lot ${tool.lot || 'of this bottle'}. Write down first whether its shelf life may be extended.`,
    );
  return lot.shelfLife === 'extendable'
    ? ok(null)
    : refuse(
        'fixed',
        `The shelf life of lot ${lot.lot} ends on a fixed day: it cannot be extended. Dispose of it.`,
      );
}
