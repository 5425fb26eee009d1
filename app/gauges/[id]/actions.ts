'use server';

import { refusedState } from '@/app/_server/act';
import { backTo } from '@/app/_server/entered';
import { numberOrNull, text, textOrNull } from '@/app/_server/form-fields';
import { mended } from '@/app/_server/mend';
import type { FormState } from '@/app/_shared/form/form-state';
import { checkGauge, dropGauge, setGaugeInterval } from '@/db/commands/keep-gauge';
import { recordCalibration } from '@/db/commands/record-calibration';
import { checkFigures } from '@/lib/gauge/check-figures';
import { FeatureSchema } from '@/lib/shop/calibration';
import { RecordCalibrationInput } from '@/lib/shop/command-input';
import { CheckGaugeInput, DropGaugeInput, SetGaugeIntervalInput } from '@/lib/shop/gauge-input';
import { figuresOfForm, OUTCOME, outcomeOf } from './_parts/calibration-of-form';

const enteredAndBack = backTo('/gauges');

export async function dropGaugeAction(_state: FormState, form: FormData): Promise<FormState> {
  const door = { action: 'set-aside-gauge', schema: DropGaugeInput, command: dropGauge } as const;
  return enteredAndBack(door, { onDay: text(form, 'onDay') }, form);
}

export async function checkGaugeAction(_state: FormState, form: FormData): Promise<FormState> {
  const door = { action: 'check-gauge', schema: CheckGaugeInput, command: checkGauge } as const;
  const raw = {
    onDay: text(form, 'onDay'),
    result: text(form, 'result'),
    againstToolId: textOrNull(form, 'againstToolId'),
    qualifies: text(form, 'againstToolId') !== '',
  };
  return enteredAndBack(door, raw, form);
}

export async function setIntervalAction(_state: FormState, form: FormData): Promise<FormState> {
  const door = {
    action: 'set-gauge-interval',
    schema: SetGaugeIntervalInput,
    command: setGaugeInterval,
  } as const;
  const raw = {
    intervalDays: numberOrNull(form, 'intervalDays'),
    intervalEnds: numberOrNull(form, 'intervalEnds'),
    method: text(form, 'method'),
  };
  return enteredAndBack(door, raw, form);
}

export async function calibrateGaugeAction(_state: FormState, typed: FormData): Promise<FormState> {
  const form = mended(typed);
  const outcome = outcomeOf(text(form, 'outcome'));
  if (outcome === undefined)
    return refusedState({ code: 'outcome', sentence: 'Say what came of it.', field: 'outcome' }, form);
  const said = OUTCOME[outcome];
  const figures = figuresOfForm(form);
  const row = figures === null ? null : FeatureSchema.safeParse(figures);
  if (row?.success && text(form, 'figuresAreRight') === '') {
    const checked = checkFigures(row.data, {
      asFound: said.asFound,
      asLeft: said.result === 'pass' ? 'in' : 'out',
    });
    if (!checked.ok) return askFirst(refusedState(checked.refusal, form));
  }
  const door = {
    action: 'record-calibration',
    schema: RecordCalibrationInput,
    command: recordCalibration,
  } as const;
  const raw = {
    ...said,
    onDay: text(form, 'onDay'),
    dueOnDay: said.result === 'fail' ? null : textOrNull(form, 'dueOnDay'),
    certificate: text(form, 'certificate'),
    laboratory: text(form, 'laboratory'),
    againstToolId: text(form, 'againstToolId'),
    features: figures === null ? [] : [figures],
    rule: text(form, 'rule') === '' ? undefined : text(form, 'rule'),
  };
  return enteredAndBack(door, raw, form);
}

/** A doubtful figure is asked about; one press says that it is right. */
function askFirst(state: FormState): FormState {
  if (state.status !== 'refused') return state;
  return { ...state, mend: { label: 'It is right: record it', values: { figuresAreRight: 'yes' } } };
}
