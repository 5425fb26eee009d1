'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { z } from 'zod';
import { act, refusedState } from '@/app/_server/act';
import { numberOrNull, stamp, text, textOrNull } from '@/app/_server/form-fields';
import { mended } from '@/app/_server/mend';
import type { FormState } from '@/app/_shared/form/form-state';
import { checkGauge, dropGauge, setGaugeInterval } from '@/db/commands/keep-gauge';
import { recordCalibration } from '@/db/commands/record-calibration';
import type { Recorded } from '@/db/ledger/ledger';
import type { Action } from '@/lib/access/permit';
import { checkFigures } from '@/lib/gauge/check-figures';
import { FeatureSchema } from '@/lib/shop/calibration';
import { RecordCalibrationInput } from '@/lib/shop/command-input';
import { CheckGaugeInput, DropGaugeInput, SetGaugeIntervalInput } from '@/lib/shop/gauge-input';
import { tidyToolId } from '@/lib/shop/tool-id';
import { figuresOfForm, OUTCOME, outcomeOf } from './_parts/calibration-of-form';

type Door<A extends Action, S extends z.ZodType> = Parameters<typeof act<A, S, Recorded>>[0];

/** Runs a command about a gauge; its page then says what was done, with an Undo. */
async function enteredAndBack<A extends Action, S extends z.ZodType>(
  door: Door<A, S>,
  raw: object,
  form: FormData,
): Promise<FormState> {
  const about = { ...stamp(form), toolId: text(form, 'toolId'), reason: text(form, 'reason') };
  const done = await act(door, { ...about, ...raw }, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  const query = done.value.alreadyRecorded ? '' : `?done=${encodeURIComponent(done.value.id)}`;
  redirect(`/gauges/${encodeURIComponent(tidyToolId(text(form, 'toolId')))}${query}`);
}

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
