'use server';

import { refusedState } from '@/app/_server/act';
import { backTo, entered } from '@/app/_server/entered';
import { checked, number, numberOrNull, text, textOrNull } from '@/app/_server/form-fields';
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
import { REJECT_CAUSES } from '@/lib/shop/vocabulary';
import { findingOfForm } from '../_parts/finding-of-form';
import { threadOfTool } from '../_parts/thread-of-tool';

const enteredAndBack = backTo('/tools');

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
  const raw = { condition: text(form, 'condition'), ...brokeOff(form) };
  const door = { action: 'return-tool', schema: ReturnToolInput, command: returnTool } as const;
  return enteredAndBack(door, raw, form);
}

export async function moveToolAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { to: text(form, 'to'), backOnDay: textOrNull(form, 'backOnDay') };
  const door = { action: 'move-tool', schema: MoveToolInput, command: moveTool } as const;
  return enteredAndBack(door, raw, form);
}

export async function endEdgeAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = { cause: text(form, 'cause'), to: text(form, 'to'), ...brokeOff(form) };
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

/** Something broke off it: its pieces are owed until somebody accounts for them. */
function brokeOff(form: FormData): { pieces?: 'owed' } {
  return checked(form, 'piecesOwed') ? { pieces: 'owed' } : {};
}
