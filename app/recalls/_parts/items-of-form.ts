import { number } from '@/app/_server/form-fields';

/** The looks that are ticked, each with how many of its ends are meant. */
export function itemsOfForm(form: FormData) {
  return form
    .getAll('acceptanceId')
    .filter((id): id is string => typeof id === 'string')
    .map((acceptanceId) => ({ acceptanceId, endCount: number(form, `ends-${acceptanceId}`) }));
}
