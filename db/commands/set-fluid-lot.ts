import type { Permit } from '../../lib/access/permit';
import { type Refusal, type Result, refuse } from '../../lib/result';
import type { SetFluidLot } from '../../lib/shop/fluid-input';
import { fluidLotId } from '../../lib/shop/fluid-lot';
import type { Env, Recorded } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';

/** Writes down what is known of a lot of fluid: its sheet, its label, the supplier's answer. Nothing is guessed. */
export function setFluidLot(
  db: Db,
  permit: Permit<'keep-fluid'>,
  input: SetFluidLot,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, lot } = input;
  return write(db, permit, env, (ledger) => {
    const subjectId = fluidLotId(lot);
    const draft = { id, deviceAtMs, reason, kind: 'fluid-lot-set', subjectId, payload: lot } as const;
    const before = ledger.knows(draft);
    if (before !== undefined) return before;
    if (ledger.find('part', lot.partId)?.role !== 'fluid')
      return refuse('unknown-part', 'Choose which fluid it is: the shop knows no such fluid.', 'partId');
    return ledger.record(draft);
  });
}
