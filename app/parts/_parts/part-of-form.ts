import { checked, number, numberOrNull, text, textOrNull } from '@/app/_server/form-fields';
import { keyFromName } from '@/app/_shared/form/key-from-name';
import { ok, type Result, refuse } from '@/lib/result';
import type { Part } from '@/lib/shop/part';

/**
 * The part that a form says; zod judges it afterwards. A part that the shop has keeps its kind and its key; a new one takes
 * its key from its name, and is refused where that key is taken.
 */
export function partOfForm(form: FormData, known: readonly Part[]): Result<Record<string, unknown>> {
  const before = known.find(({ id }) => id === text(form, 'id'));
  const id = before?.id ?? keyFromName(`${text(form, 'role')} ${text(form, 'name')}`);
  if (before === undefined && known.some((part) => part.id === id)) {
    return refuse(
      'exists',
      'The shop has a part of this kind and name already. Change that one, or name this one apart.',
      'name',
    );
  }
  const role = before?.role ?? text(form, 'role');
  return ok({
    id,
    role,
    name: text(form, 'name'),
    designation: text(form, 'designation'),
    hand: textOrNull(form, 'hand'),
    adjustable: checked(form, 'adjustable'),
    matchedPair: checked(form, 'matchedPair'),
    regrindLimit: number(form, 'regrindLimit') ?? 0,
    fitsConnectionIds: strings(form, 'fits'),
    supplier: text(form, 'supplier'),
    priceMinor: priceMinor(form),
    leadTimeDays: numberOrNull(form, 'leadTimeDays'),
    ...(role === 'fluid' ? fluidOfForm(form) : NO_FLUID),
  });
}

const NO_FLUID = {
  permittedMaterialIds: 'all',
  chlorinated: 'unknown',
  openedLifeDays: null,
  dropsPerMl: null,
  containerMl: null,
} as const;

function fluidOfForm(form: FormData) {
  return {
    permittedMaterialIds: checked(form, 'permitsAll') ? 'all' : strings(form, 'permits'),
    chlorinated: text(form, 'chlorinated') || 'unknown',
    openedLifeDays: numberOrNull(form, 'openedLifeDays'),
    dropsPerMl: numberOrNull(form, 'dropsPerMl'),
    containerMl: numberOrNull(form, 'containerMl'),
  };
}

/** Money as typed in major units, kept in hundredths. */
function priceMinor(form: FormData): number | null {
  const price = numberOrNull(form, 'price');
  return price === null ? null : Math.round(price * 100);
}

function strings(form: FormData, name: string): string[] {
  return form.getAll(name).filter((value): value is string => typeof value === 'string');
}
