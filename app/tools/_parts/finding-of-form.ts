import { number, numberOrNull, text } from '@/app/_server/form-fields';
import { ok, type Result, refuse } from '@/lib/result';
import { parseLength } from '@/lib/units/parse-length';

/** What a reading form says, lengths in mm; the door judges the rest. A length that cannot be read names its field. */
export function findingOfForm(form: FormData): Result<Record<string, unknown>> {
  const method = text(form, 'method');
  if (method === 'grade') return ok({ method, grade: text(form, 'grade') });
  if (method === 'ring')
    return ok({ method, go: text(form, 'go'), notGoTurns: numberOrNull(form, 'notGoTurns') });
  if (method === 'flank-land') {
    const land = lengthMm(form, 'land', 'landUnit');
    return land.ok ? ok({ method, landMm: land.value }) : land;
  }
  const lengths: Record<string, number> = {};
  for (const name of ['pitchDiameter', 'min', 'max']) {
    const length = lengthMm(form, name, 'pitchUnit');
    if (!length.ok) return length;
    lengths[`${name}Mm`] = length.value;
  }
  return ok({ method, ...lengths, instrument: text(form, 'instrument') });
}

/** A length of 0 is a reading too: no land at all. */
function lengthMm(form: FormData, name: string, unitName: string): Result<number> {
  if (number(form, name) === 0) return ok(0);
  const unit = text(form, unitName) === 'mm' ? 'mm' : 'in';
  const length = parseLength(text(form, name), unit);
  return length.ok ? ok(length.value.lengthMm) : refuse(length.refusal.code, length.refusal.sentence, name);
}
