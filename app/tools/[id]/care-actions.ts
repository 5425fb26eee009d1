'use server';

import { backTo } from '@/app/_server/entered';
import { text } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { adjustDie, checkFirstOff, freeTool, reserveTool } from '@/db/commands/care-for-tool';
import { moveTool } from '@/db/commands/move-tool';
import { MoveToolInput } from '@/lib/shop/command-input';
import { AdjustDieInput, CheckFirstOffInput, FreeToolInput, ReserveToolInput } from '@/lib/shop/kit-input';

const enteredAndBack = backTo('/tools');

export async function reserveToolAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { jobLineId: text(form, 'jobLineId'), untilDay: text(form, 'untilDay') };
  const door = { action: 'issue-tool', schema: ReserveToolInput, command: reserveTool } as const;
  return enteredAndBack(door, raw, form);
}

export async function freeToolAction(_state: FormState, form: FormData): Promise<FormState> {
  const door = { action: 'issue-tool', schema: FreeToolInput, command: freeTool } as const;
  return enteredAndBack(door, {}, form);
}

export async function adjustDieAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    direction: text(form, 'direction'),
    amount: text(form, 'amount'),
    onDay: text(form, 'onDay'),
  };
  const door = { action: 'read-edge', schema: AdjustDieInput, command: adjustDie } as const;
  return enteredAndBack(door, raw, form);
}

export async function checkFirstOffAction(_state: FormState, form: FormData): Promise<FormState> {
  const fields = [...form.keys()].filter((name) => name.startsWith('gauge-'));
  const gaugeIds = [...new Set(fields.map((name) => text(form, name)).filter((id) => id !== ''))];
  const raw = { result: text(form, 'result'), onDay: text(form, 'onDay'), gaugeIds };
  const door = { action: 'read-edge', schema: CheckFirstOffInput, command: checkFirstOff } as const;
  return enteredAndBack(door, raw, form);
}

export async function scrapToolAction(_state: FormState, form: FormData): Promise<FormState> {
  const door = { action: 'move-tool', schema: MoveToolInput, command: moveTool } as const;
  return enteredAndBack(door, { to: 'scrapped', backOnDay: null }, form);
}
