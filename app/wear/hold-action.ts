'use server';

import { revalidatePath } from 'next/cache';
import { act } from '@/app/_server/act';
import { stamp, text } from '@/app/_server/form-fields';
import type { FormState } from '@/app/_shared/form/form-state';
import { moveTool } from '@/db/commands/move-tool';
import { MoveToolInput } from '@/lib/shop/command-input';

/** Sets a tool of a doubtful lot aside so that it is looked at before it goes out. */
export async function holdAction(_state: FormState, form: FormData): Promise<FormState> {
  const toolId = text(form, 'toolId');
  const raw = { ...stamp(form), toolId, reason: text(form, 'reason'), to: 'quarantined', backOnDay: null };
  const door = { action: 'move-tool', schema: MoveToolInput, command: moveTool } as const;
  const done = await act(door, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: `${toolId} set aside.`, undoEntryId: done.value.id };
}
