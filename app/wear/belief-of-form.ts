import { number, text } from '@/app/_server/form-fields';

/** What the form of one kind's beliefs says; the door judges it. */
export function beliefOfForm(form: FormData) {
  const figure = (name: string) => ({
    typical: number(form, `${name}.typical`),
    giveOrTake: number(form, `${name}.giveOrTake`),
  });
  return {
    kind: text(form, 'kind'),
    shape: figure('shape'),
    regrind: figure('regrind'),
    dry: figure('dry'),
    rework: figure('rework'),
    partGiveOrTake: number(form, 'partGiveOrTake'),
    livesPerIncident: number(form, 'livesPerIncident'),
    longTailPercent: number(form, 'longTailPercent'),
  };
}
