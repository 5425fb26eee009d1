'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { act, refusedState } from '@/app/_server/act';
import { checked, stamp, text, textOrNull } from '@/app/_server/form-fields';
import { shownAtIssue } from '@/app/_server/shown';
import type { FormState } from '@/app/_shared/form/form-state';
import { shopDb } from '@/db/client';
import { accountPieces } from '@/db/commands/care-for-tool';
import { countStock } from '@/db/commands/count-stock';
import { issueKit } from '@/db/commands/issue-kit';
import { returnTool } from '@/db/commands/issue-tool';
import { closeKit, searchKit } from '@/db/commands/keep-kit';
import { returnTools } from '@/db/commands/return-tools';
import { findKitStock } from '@/db/queries/kit-stock';
import { findTool } from '@/db/queries/tools';
import { judgeItem } from '@/lib/kit/judge-item';
import { STOP_HEADLINE } from '@/lib/kit/kit-stop';
import { refuse } from '@/lib/result';
import { ReturnToolInput } from '@/lib/shop/command-input';
import {
  AccountPiecesInput,
  CloseKitInput,
  CountStockInput,
  IssueKitInput,
  ReturnToolsInput,
  SearchKitInput,
} from '@/lib/shop/kit-input';
import type { Shown } from '@/lib/shop/shown';
import { tidyToolId } from '@/lib/shop/tool-id';
import { EDGE_KINDS, type Role } from '@/lib/shop/vocabulary';
import { kitNeed } from './_parts/kit-need';

/** What the counter says of one scan. */
export type ScanAnswer =
  | { readonly goes: true; readonly toolId: string; readonly role: Role; readonly mind: string | null }
  | { readonly goes: false; readonly toolId: string; readonly headline: string; readonly sentence: string };

const SCAN_MAX = 80;
const KIT_MAX = 40;

/** Judges one scanned thing for the kit of a line; changes nothing. */
export async function scanIntoKit(
  lineId: string,
  scannedIds: readonly string[],
  typed: string,
): Promise<ScanAnswer> {
  const scanned = tidyToolId(String(typed).slice(0, SCAN_MAX));
  const db = shopDb();
  const asked = kitNeed(db, String(lineId));
  const stop = (headline: string, sentence: string): ScanAnswer => ({
    goes: false,
    toolId: scanned,
    headline,
    sentence,
  });
  if (asked === undefined) return stop('JOB CLOSED', `${lineId} is not a line of an open job any more.`);
  const [stock] = findKitStock(db, [scanned]);
  if (stock === undefined)
    return stop(
      STOP_HEADLINE.unknown,
      `No tool ${scanned} is in the record. Check the mark, or receive it first.`,
    );
  const inKit = scannedIds.slice(0, KIT_MAX).map(String);
  const scan = judgeItem(stock.tool, stock.part, { ...asked.need, scannedIds: inKit });
  return scan.goes ? scan : stop(STOP_HEADLINE[scan.code], scan.sentence);
}

/** Issues everything that was scanned or ticked as one kit. */
export async function issueKitAction(_state: FormState, form: FormData): Promise<FormState> {
  const jobLineId = text(form, 'jobLineId');
  const toolIds = form.getAll('toolId').map(String);
  const needed = Number(text(form, 'needed'));
  if (toolIds.length < needed && !checked(form, 'incomplete'))
    return refusedState(
      refuse(
        'incomplete',
        `${needed - toolIds.length} of ${needed} items are not in hand. Scan or tick them, or say that the kit goes out without.`,
      ).refusal,
      form,
    );
  const door = { action: 'issue-tool', schema: IssueKitInput, command: issueKit } as const;
  const raw = {
    ...stamp(form),
    ...{ jobLineId, toolIds, toPersonId: text(form, 'toPersonId'), bench: text(form, 'bench') },
    reason: text(form, 'reason'),
    shown: await shownOf(toolIds, jobLineId),
  };
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  redirect(`/crib/kits/${encodeURIComponent(done.value.id)}?done=${encodeURIComponent(done.value.id)}`);
}

/** What the screens say of each edge in the kit at this moment, kept with its issue. */
async function shownOf(toolIds: readonly string[], jobLineId: string): Promise<Record<string, Shown>> {
  const shown: Record<string, Shown> = {};
  for (const typed of toolIds) {
    const tool = findTool(shopDb(), typed);
    if (tool === undefined || !EDGE_KINDS.some((kind) => kind === tool.role)) continue;
    const said = await shownAtIssue(tool.id, jobLineId);
    if (said !== undefined) shown[tool.id] = said;
  }
  return shown;
}

const BACK_WORDS: Record<string, string> = {
  ok: 'back, in order',
  dull: 'back, dull: set aside',
  damaged: 'back, chipped or broken: set aside',
  unsure: 'back, set aside for a look',
};

/** Takes back everything that was scanned, looked at and in order. */
async function returnAll(form: FormData): Promise<FormState> {
  const toolIds = [text(form, 'toolId'), ...form.getAll('also').map(String)];
  if (checked(form, 'piecesOwed'))
    return refusedState(
      refuse('pieces', `Something broke off ${toolIds[0]}: take it back by itself first.`).refusal,
      form,
    );
  const door = { action: 'return-tool', schema: ReturnToolsInput, command: returnTools } as const;
  const done = await act(door, { ...stamp(form), toolIds, reason: '' }, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  const sentence = `${toolIds.length} items back, in order.`;
  return { status: 'done', sentence, undoEntryId: done.value.id };
}

/** Takes one item back in the condition that was tapped; or, where that was tapped, all that were scanned in order. */
export async function returnItemAction(_state: FormState, form: FormData): Promise<FormState> {
  if (checked(form, 'all')) return returnAll(form);
  const condition = text(form, 'condition');
  const raw = {
    ...stamp(form),
    ...{ toolId: text(form, 'toolId'), condition, reason: text(form, 'reason') },
    ...(checked(form, 'piecesOwed') ? { pieces: 'owed' } : {}),
  };
  const door = { action: 'return-tool', schema: ReturnToolInput, command: returnTool } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  const toolId = tidyToolId(text(form, 'toolId'));
  return {
    status: 'done',
    sentence: `${toolId} ${BACK_WORDS[condition] ?? 'back'}.`,
    undoEntryId: done.value.id,
  };
}

export async function accountPiecesAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    ...{ toolId: text(form, 'toolId'), where: text(form, 'where'), reason: '' },
    allFound: text(form, 'allFound') === 'yes',
  };
  const door = { action: 'return-tool', schema: AccountPiecesInput, command: accountPieces } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  const sentence = raw.allFound
    ? 'All pieces accounted for.'
    : 'The search is ended. Hold back what it cut until every bore was looked through with a light.';
  return { status: 'done', sentence };
}

export async function searchKitAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    ...{ kitId: text(form, 'kitId'), toolIds: form.getAll('missing').map(String) },
    ...{ lastSeen: text(form, 'lastSeen'), reason: '' },
  };
  const door = { action: 'return-tool', schema: SearchKitInput, command: searchKit } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: 'The search is open; the crib lists what is missing, and whose it is.' };
}

export async function closeKitAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    ...{ kitId: text(form, 'kitId'), lostToolIds: form.getAll('lost').map(String) },
    reason: text(form, 'reason'),
  };
  const door = { action: 'return-tool', schema: CloseKitInput, command: closeKit } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  redirect('/crib');
}

/** Enters a stock-take: what was scanned, and what is with each difference. */
export async function countStockAction(_state: FormState, form: FormData): Promise<FormState> {
  const variances = form.getAll('variance').map((value) => {
    const [kind = '', toolId = ''] = String(value).split(' ');
    return { toolId, kind, outcome: text(form, `outcome ${toolId}`), reason: text(form, `reason ${toolId}`) };
  });
  const raw = {
    ...stamp(form),
    ...{ scope: text(form, 'scope'), reason: '', variances },
    connectionId: textOrNull(form, 'connectionId') ?? undefined,
    edgeKind: textOrNull(form, 'edgeKind') ?? undefined,
    scanned: form.getAll('scanned').map(String),
  };
  const door = { action: 'move-tool', schema: CountStockInput, command: countStock } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return {
    status: 'done',
    sentence: 'The count is in the log, with every difference and its reason.',
    undoEntryId: done.value.id,
  };
}
