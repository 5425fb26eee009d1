'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { text } from '@/app/_server/form-fields';
import { chooseActor } from '@/app/_server/session';
import { shopDb } from '@/db/client';
import { findActor } from '@/db/queries/shop';
import { localPath } from './local-path';

/** Remembers whose name was chosen and goes back to where the choice was asked for. */
export async function chooseAction(form: FormData): Promise<void> {
  const actor = findActor(shopDb(), text(form, 'personId'));
  if (actor === undefined) redirect('/who');
  await chooseActor(actor.personId);
  revalidatePath('/', 'layout');
  redirect(localPath(text(form, 'back')));
}
