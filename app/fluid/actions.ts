'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { act, refusedState } from '@/app/_server/act';
import { backTo } from '@/app/_server/entered';
import { number, stamp, text } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { countDrops, disposeFluid, extendFluid, openFluid, readFluidLevel } from '@/db/commands/keep-fluid';
import { setFluidLot } from '@/db/commands/set-fluid-lot';
import { OpenFluidInput, ReadFluidLevelInput } from '@/lib/shop/command-input';
import {
  CountDropsInput,
  DisposeFluidInput,
  ExtendFluidInput,
  SetFluidLotInput,
} from '@/lib/shop/fluid-input';
import { fluidLotOfForm } from './lot-of-form';

const enteredAndBack = backTo('/fluid', 'said');

export async function openBottleAction(_state: FormState, form: FormData): Promise<FormState> {
  const door = { action: 'keep-fluid', schema: OpenFluidInput, command: openFluid } as const;
  return enteredAndBack(door, { onDay: text(form, 'onDay') }, form);
}

export async function readLevelAction(_state: FormState, form: FormData): Promise<FormState> {
  const door = { action: 'keep-fluid', schema: ReadFluidLevelInput, command: readFluidLevel } as const;
  return enteredAndBack(door, { levelMl: number(form, 'levelMl'), onDay: text(form, 'onDay') }, form);
}

export async function countDropsAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    drops: number(form, 'drops'),
    volumeMl: number(form, 'volumeMl'),
    onDay: text(form, 'onDay'),
  };
  const door = { action: 'keep-fluid', schema: CountDropsInput, command: countDrops } as const;
  return enteredAndBack(door, raw, form);
}

export async function extendAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    onDay: text(form, 'onDay'),
    untilDay: text(form, 'untilDay'),
    inspection: text(form, 'inspection'),
  };
  const door = { action: 'extend-fluid', schema: ExtendFluidInput, command: extendFluid } as const;
  return enteredAndBack(door, raw, form);
}

export async function disposeAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    onDay: text(form, 'onDay'),
    how: text(form, 'how'),
    transferNote: text(form, 'transferNote'),
    volumeMl: number(form, 'volumeMl'),
  };
  const door = { action: 'keep-fluid', schema: DisposeFluidInput, command: disposeFluid } as const;
  return enteredAndBack(door, raw, form);
}

/** Writes down what is known of a lot. */
export async function setLotAction(_state: FormState, form: FormData): Promise<FormState> {
  const door = { action: 'keep-fluid', schema: SetFluidLotInput, command: setFluidLot } as const;
  const raw = { ...stamp(form), reason: '', lot: fluidLotOfForm(form) };
  const done = await act(door, raw, form);
  if (!done.ok) {
    const { state } = done;
    if (state.status !== 'refused') return state;
    return { ...state, field: state.field?.replace(/^lot\./, '') ?? null };
  }
  const toolId = text(form, 'toolId');
  if (toolId === '') return refusedState({ code: 'input', sentence: 'Which bottle was this about?' }, form);
  revalidatePath('/', 'layout');
  redirect(`/fluid/${encodeURIComponent(toolId)}?lot=written`);
}
