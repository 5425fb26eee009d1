import type { Refusal } from '@/lib/result';

/** Names under which a form may send the unit of a length: its own, or one for all its lengths. */
const SHARED_UNIT_FIELDS = ['unit', 'pitchUnit'];

/** The one press that sends a form again with the unit that was meant; undefined where the refusal knows of none. */
export function mendOf(
  refusal: Refusal,
  typed: FormData,
): { label: string; values: Record<string, string> } | undefined {
  const { meant, field } = refusal;
  if (meant === undefined || field === undefined) return undefined;
  const unitField = [`${field}Unit`, ...SHARED_UNIT_FIELDS].find((name) => typed.has(name));
  if (unitField === undefined) return undefined;
  return {
    label: `Yes, ${meant.figure} ${meant.unit}`,
    values: { [field]: meant.figure, [unitField]: meant.unit },
  };
}

/** The form as it was meant: what the press on "Yes, 9.5 mm" puts in place of what was typed. Only fields that the form has. */
export function mended(form: FormData): FormData {
  const mend = form.get('mend');
  if (typeof mend !== 'string') return form;
  const meant = new FormData();
  for (const [name, value] of form) if (name !== 'mend') meant.append(name, value);
  for (const [name, value] of Object.entries(readMend(mend))) {
    if (form.has(name) && typeof value === 'string') meant.set(name, value);
  }
  return meant;
}

function readMend(mend: string): object {
  try {
    const read: unknown = JSON.parse(mend);
    return typeof read === 'object' && read !== null ? read : {};
  } catch {
    return {};
  }
}
