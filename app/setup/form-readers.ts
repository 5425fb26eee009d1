import { number, text } from '@/app/_server/form-fields';
import { keyFromName } from '@/app/_shared/form/key-from-name';
import { ruleOfForm } from '@/app/_shared/form/rule-of-form';

/** What the set-up forms send, as the doors take it. */

export function shopOf(form: FormData) {
  return {
    name: text(form, 'shopName'),
    units: text(form, 'units') || 'in',
    currency: text(form, 'currency').toUpperCase() || 'USD',
    requiredProbability: share(form, 'required'),
    requiredProbabilityPrecious: share(form, 'requiredPrecious'),
    fluidWasteFactor: number(form, 'fluidWasteFactor'),
    acceptanceRule: ruleOfForm(form),
  };
}

/** "90" or "90 %" is 0.9; left empty: the default. */
function share(form: FormData, name: string): number | undefined {
  const typed = text(form, name).replace('%', '').trim();
  return typed === '' ? undefined : Number(typed) / 100;
}

/** How gauges are judged; the target is typed in per cent. */
export function gaugeSettingsOf(form: FormData) {
  const percent = number(form, 'targetReliability');
  return {
    decisionRule: text(form, 'decisionRule'),
    targetReliability: percent === undefined ? undefined : Number((percent / 100).toPrecision(12)),
    why: text(form, 'why'),
  };
}

export function personOf(form: FormData): { id: string; name: string; role: string } {
  const name = text(form, 'personName');
  return { id: text(form, 'personId') || keyFromName(name), name, role: text(form, 'personRole') };
}

export function tickedSizes(form: FormData): string[] {
  return form.getAll('connectionIds').filter((value): value is string => typeof value === 'string');
}

/** The rows of the first-guess form: ends, and give or take a factor. A row left empty stays as it is. */
export function guessRows(form: FormData) {
  const partIds = form.getAll('guessPartId').filter((value): value is string => typeof value === 'string');
  return partIds
    .filter((partId) => text(form, `ends-${partId}`) !== '')
    .map((partId) => ({
      partId,
      connectionId: text(form, `connection-${partId}`),
      ends: number(form, `ends-${partId}`),
      giveOrTake: number(form, `giveOrTake-${partId}`),
    }));
}

/** The parts for which a count was typed. */
export function countedParts(form: FormData): string[] {
  const partIds = form.getAll('countPartId').filter((value): value is string => typeof value === 'string');
  return partIds.filter((partId) => (number(form, `count-${partId}`) ?? 0) !== 0);
}
