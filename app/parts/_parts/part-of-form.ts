import { checked, number, numberOrNull, text, textOrNull } from '@/app/_server/form-fields';
import { keyFromName } from '@/app/_shared/form/key-from-name';
import { ok, type Result, refuse } from '@/lib/result';
import type { Part } from '@/lib/shop/part';
import { OTHER_SUPPLIERS, readBreaks } from './price-breaks';

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
    ...termsOfForm(form, ''),
    offers: offersOfForm(form),
    ...(role === 'fluid' ? fluidOfForm(form) : NO_FLUID),
  });
}

/** Packs, least quantity and price breaks, as typed under a prefix. */
function termsOfForm(form: FormData, prefix: string) {
  return {
    packSize: number(form, `${prefix}packSize`) ?? 1,
    minQuantity: number(form, `${prefix}minQuantity`) ?? 1,
    breakKind: text(form, `${prefix}breakKind`) || 'all-units',
    priceBreaks: readBreaks(text(form, `${prefix}breaks`)),
  };
}

/** The other suppliers that were named. */
function offersOfForm(form: FormData) {
  return Array.from({ length: OTHER_SUPPLIERS }, (_, at) => `offer${at}.`)
    .filter((prefix) => text(form, `${prefix}supplier`) !== '')
    .map((prefix) => ({
      supplier: text(form, `${prefix}supplier`),
      priceMinor: priceMinor(form, `${prefix}price`),
      leadTimeDays: numberOrNull(form, `${prefix}leadTimeDays`),
      ...termsOfForm(form, prefix),
    }));
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
    shelfLifeDays: numberOrNull(form, 'shelfLifeDays'),
    permittedDuties: form.has('duties') ? strings(form, 'duties') : ['ordinary'],
  };
}

/** Money as typed in major units, kept in hundredths. */
function priceMinor(form: FormData, name = 'price'): number | null {
  const price = numberOrNull(form, name);
  return price === null ? null : Math.round(price * 100);
}

function strings(form: FormData, name: string): string[] {
  return form.getAll(name).filter((value): value is string => typeof value === 'string');
}
