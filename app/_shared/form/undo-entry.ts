'use server';

import { revalidatePath } from 'next/cache';
import { act } from '@/app/_server/act';
import { reverseEntry } from '@/db/commands/reverse-entry';
import { ReverseEntryInput } from '@/lib/shop/command-input';
import type { FormState } from './form-state';

/** Takes back an entry that was just made. */
export async function undoEntry(
  _state: FormState,
  input: { targetId: string; entryId: string; deviceAtMs: number },
): Promise<FormState> {
  const door = { action: 'reverse-entry', schema: ReverseEntryInput, command: reverseEntry } as const;
  const done = await act(door, { ...input, reason: 'undone at once' }, new FormData());
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  return { status: 'done', sentence: 'Taken back. Both entries stay in the log.' };
}
