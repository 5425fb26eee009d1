import { numberOrNull, text } from '@/app/_server/form-fields';
import { type CutThread, readTypedLand, readTypedPitch, type Typed } from '@/lib/reading/typed-finding';
import { ok, type Result } from '@/lib/result';

/**
 * What a reading form says, lengths in mm; the door judges the rest. A length that cannot be read, or that fits the thread only in
 * the other unit, names its field. `thread`: what the tool's die cuts, where the shop knows.
 */
export function findingOfForm(form: FormData, thread?: CutThread): Result<Record<string, unknown>> {
  const method = text(form, 'method');
  if (method === 'grade') return ok({ method, grade: text(form, 'grade') });
  if (method === 'ring')
    return ok({ method, go: text(form, 'go'), notGoTurns: numberOrNull(form, 'notGoTurns') });
  if (method === 'flank-land') {
    const land = readTypedLand(typed(form, 'land'));
    return land.ok ? ok({ method, landMm: land.value }) : land;
  }
  const overWires = form.has('overWires')
    ? { overWires: typed(form, 'overWires'), wire: typed(form, 'wire') }
    : { pitchDiameter: typed(form, 'pitchDiameter') };
  const limits = { min: typed(form, 'min'), max: typed(form, 'max') };
  const instrument = text(form, 'instrument') === 'micrometer' ? 'micrometer' : 'wires';
  return readTypedPitch({ ...overWires, ...limits, instrument }, thread);
}

/** A length with the unit of its own field, or of all fields of the form. */
function typed(form: FormData, name: string): Typed {
  const unit = text(form, `${name}Unit`) || text(form, 'pitchUnit');
  return { text: text(form, name), unit: unit === 'mm' ? 'mm' : 'in' };
}
