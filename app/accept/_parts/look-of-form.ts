import { checked, number, numberOrNull, text, textOrNull } from '@/app/_server/form-fields';
import type { Role } from '@/lib/shop/vocabulary';

const ROLES: readonly Role[] = ['go-ring', 'not-go-ring', 'cone-gauge', 'length-gauge'];

/** A look at ends as the form at the vise sends it. */
export function lookOfForm(form: FormData) {
  const operations = (['cone', 'thread'] as const).filter((operation) =>
    checked(form, `checked-${operation}`),
  );
  return {
    jobLineId: textOrNull(form, 'jobLineId'),
    connectionId: text(form, 'connectionId'),
    materialId: text(form, 'materialId'),
    heat: text(form, 'heat'),
    firstEndNo: numberOrNull(form, 'firstEndNo'),
    endCount: number(form, 'endCount'),
    endMarks: marksOf(text(form, 'endMarks')),
    operations,
    gauges: ROLES.flatMap((role) => gaugeOf(form, role)),
    finish: text(form, 'finish'),
    coneContact: text(form, 'coneContact') || 'not-checked',
    exposedThreads: numberOrNull(form, 'exposedThreads'),
    boreClear: checked(form, 'boreClear'),
    otherFault: textOrNull(form, 'otherFault'),
    dieId: textOrNull(form, 'dieId'),
    bladeId: textOrNull(form, 'bladeId'),
    fluidId: textOrNull(form, 'fluidId'),
    independentCheck: text(form, 'independentCheck') || 'no',
    checkKind: text(form, 'checkKind'),
    regaugesId: textOrNull(form, 'regaugesId'),
  };
}

interface Said {
  readonly toolId: string;
  readonly role: Role;
  readonly verdict: string;
  readonly turns: number | null;
}

/** One gauge with what it said; none where it was not used or nobody wrote it down. */
function gaugeOf(form: FormData, role: Role): Said[] {
  const toolId = text(form, `gauge-${role}`);
  if (toolId === '') return [];
  if (role === 'not-go-ring') {
    const turns = numberOrNull(form, 'notGoTurns');
    return turns === null ? [] : [{ toolId, role, verdict: 'pass', turns }];
  }
  const verdict = text(form, `verdict-${role}`);
  return verdict === '' || verdict === 'not-used' ? [] : [{ toolId, role, verdict, turns: null }];
}

/** “S-18 end 1, S-18 end 2”: by comma, semicolon or line. */
export function marksOf(typed: string): string[] {
  return typed
    .split(/[,;\n]/)
    .map((mark) => mark.trim())
    .filter((mark) => mark !== '');
}
