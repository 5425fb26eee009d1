'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { z } from 'zod';
import { act, refusedState } from '@/app/_server/act';
import { checked, number, numberOrNull, stamp, text, textOrNull } from '@/app/_server/form-fields';
import { mended } from '@/app/_server/mend';
import { shownAtIssue } from '@/app/_server/shown';
import type { FormState } from '@/app/_shared/form/form-state';
import { shopDb } from '@/db/client';
import { correctCut } from '@/db/commands/correct-cut';
import { endEdge, renewEdge } from '@/db/commands/end-edge';
import { issueTool, returnTool } from '@/db/commands/issue-tool';
import { openFluid, readFluidLevel } from '@/db/commands/keep-fluid';
import { logCut } from '@/db/commands/log-cut';
import { markTool } from '@/db/commands/mark-tool';
import { moveTool } from '@/db/commands/move-tool';
import { readEdge } from '@/db/commands/read-edge';
import { reverseEntry } from '@/db/commands/reverse-entry';
import type { Recorded } from '@/db/ledger/ledger';
import type { Action } from '@/lib/access/permit';
import {
  CorrectCutInput,
  EndEdgeInput,
  IssueToolInput,
  LogCutInput,
  MoveToolInput,
  OpenFluidInput,
  ReadEdgeInput,
  ReadFluidLevelInput,
  RenewEdgeInput,
  ReturnToolInput,
  ReverseEntryInput,
} from '@/lib/shop/command-input';
import { MarkToolInput } from '@/lib/shop/mark-input';
import { tidyToolId } from '@/lib/shop/tool-id';
import { REJECT_CAUSES } from '@/lib/shop/vocabulary';
import { findingOfForm } from '../_parts/finding-of-form';
import { threadOfTool } from '../_parts/thread-of-tool';

type Door<A extends Action, S extends z.ZodType> = Parameters<typeof act<A, S, Recorded>>[0];

/** Runs a command about a tool and says what was done, with an Undo. */
async function entered<A extends Action, S extends z.ZodType>(
  door: Door<A, S>,
  raw: object,
  form: FormData,
  sentence: string,
): Promise<FormState> {
  const about = { ...stamp(form), toolId: text(form, 'toolId'), reason: text(form, 'reason') };
  const done = await act(door, { ...about, ...raw }, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  if (done.value.alreadyRecorded)
    return { status: 'done', sentence: 'Already recorded; nothing was counted twice.' };
  return { status: 'done', sentence, undoEntryId: done.value.id };
}

/** The same for what moves the tool: its form may be gone afterwards, so the page itself says what was done. */
async function enteredAndBack<A extends Action, S extends z.ZodType>(
  door: Door<A, S>,
  raw: object,
  form: FormData,
): Promise<FormState> {
  const done = await entered(door, raw, form, '');
  if (done.status !== 'done') return done;
  const query = done.undoEntryId === undefined ? '' : `?done=${encodeURIComponent(done.undoEntryId)}`;
  redirect(`/tools/${encodeURIComponent(tidyToolId(text(form, 'toolId')))}${query}`);
}

export async function logCutAction(_state: FormState, sent: FormData): Promise<FormState> {
  const form = mended(sent);
  const ends = number(form, 'ends');
  const typed = text(form, 'threadLength');
  const raw = {
    connectionId: text(form, 'connectionId'),
    materialId: text(form, 'materialId'),
    heat: text(form, 'heat'),
    ends,
    goodEnds: number(form, 'goodEnds') ?? ends,
    threadLength: typed === '' ? null : { typed, unit: text(form, 'threadLengthUnit') },
    dry: checked(form, 'dry'),
    // The bottle is filled in beforehand: cut dry, it was none.
    fluidId: checked(form, 'dry') ? null : textOrNull(form, 'fluidId'),
    rework: checked(form, 'rework'),
    rejects: REJECT_CAUSES.flatMap(({ code }) => {
      const count = number(form, `reject-${code}`);
      return count === undefined || count === 0 ? [] : [{ cause: code, count }];
    }),
    jobLineId: textOrNull(form, 'jobLineId'),
  };
  const said = `${ends} ${ends === 1 ? 'end' : 'ends'} logged on ${text(form, 'toolId')}.`;
  return entered({ action: 'log-cut', schema: LogCutInput, command: logCut }, raw, form, said);
}

export async function issueToolAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    toPersonId: text(form, 'toPersonId'),
    jobLineId: textOrNull(form, 'jobLineId'),
    bench: text(form, 'bench'),
    shown: await shownAtIssue(text(form, 'toolId'), textOrNull(form, 'jobLineId')),
  };
  const door = { action: 'issue-tool', schema: IssueToolInput, command: issueTool } as const;
  return enteredAndBack(door, raw, form);
}

export async function returnToolAction(_state: FormState, form: FormData): Promise<FormState> {
  const condition = text(form, 'condition');
  const door = { action: 'return-tool', schema: ReturnToolInput, command: returnTool } as const;
  return enteredAndBack(door, { condition }, form);
}

export async function moveToolAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { to: text(form, 'to'), backOnDay: textOrNull(form, 'backOnDay') };
  const door = { action: 'move-tool', schema: MoveToolInput, command: moveTool } as const;
  return enteredAndBack(door, raw, form);
}

export async function endEdgeAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { cause: text(form, 'cause'), to: text(form, 'to') };
  const door = { action: 'end-edge', schema: EndEdgeInput, command: endEdge } as const;
  return enteredAndBack(door, raw, form);
}

export async function readEdgeAction(_state: FormState, sent: FormData): Promise<FormState> {
  const form = mended(sent);
  const finding = findingOfForm(form, threadOfTool(shopDb(), text(form, 'toolId')));
  if (!finding.ok) return refusedState(finding.refusal, form);
  const door = { action: 'read-edge', schema: ReadEdgeInput, command: readEdge } as const;
  return enteredAndBack(door, { finding: finding.value, onDay: text(form, 'onDay') }, form);
}

export async function markToolAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    how: text(form, 'how'),
    codeKind: textOrNull(form, 'codeKind'),
    readAs: text(form, 'readAs'),
    onDay: text(form, 'onDay'),
  };
  const door = { action: 'mark-tool', schema: MarkToolInput, command: markTool } as const;
  return enteredAndBack(door, raw, form);
}

export async function renewEdgeAction(_state: FormState, form: FormData): Promise<FormState> {
  const door = { action: 'renew-edge', schema: RenewEdgeInput, command: renewEdge } as const;
  return enteredAndBack(door, { onDay: text(form, 'onDay') }, form);
}

export async function openFluidAction(_state: FormState, form: FormData): Promise<FormState> {
  const door = { action: 'keep-fluid', schema: OpenFluidInput, command: openFluid } as const;
  return enteredAndBack(door, { onDay: text(form, 'onDay') }, form);
}

export async function readFluidLevelAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { levelMl: numberOrNull(form, 'levelMl'), onDay: text(form, 'onDay') };
  const door = { action: 'keep-fluid', schema: ReadFluidLevelInput, command: readFluidLevel } as const;
  return enteredAndBack(door, raw, form);
}

export async function takeBackAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { targetId: text(form, 'targetId') };
  const door = { action: 'reverse-entry', schema: ReverseEntryInput, command: reverseEntry } as const;
  return enteredAndBack(door, raw, form);
}

export async function correctCutAction(_state: FormState, form: FormData): Promise<FormState> {
  const rightToolId = textOrNull(form, 'rightToolId');
  const raw = { targetId: text(form, 'targetId'), rightToolId };
  const door = { action: 'reverse-entry', schema: CorrectCutInput, command: correctCut } as const;
  return enteredAndBack(door, raw, form);
}
