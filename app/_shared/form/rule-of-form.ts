import { number, text } from '@/app/_server/form-fields';

/** The acceptance rule as the rule fields send it; nothing where nothing is written. */
export function ruleOfForm(form: FormData) {
  const notGoTurnsMax = number(form, 'notGoTurnsMax');
  const whose = text(form, 'ruleWhose');
  if (notGoTurnsMax === undefined && whose === '') return undefined;
  return {
    notGoTurnsMax: notGoTurnsMax ?? null,
    whose,
    exposedThreadsMin: number(form, 'exposedThreadsMin'),
    exposedThreadsMax: number(form, 'exposedThreadsMax'),
  };
}
