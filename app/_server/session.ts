import 'server-only';
import { cookies } from 'next/headers';
import { shopDb } from '@/db/client';
import { findActor, listPeople } from '@/db/queries/shop';
import { type Actor, SET_UP } from '@/lib/access/actor';

const PERSON_COOKIE = 'edgekeep-person';
const A_YEAR_SECONDS = 31_536_000;

/**
 * Who is acting at this device: the name chosen here, if the shop still knows it. A shop that knows nobody yet is being
 * set up, by whoever opens it.
 */
export async function currentActor(): Promise<Actor | null> {
  if (listPeople(shopDb()).length === 0) return SET_UP;
  const personId = (await cookies()).get(PERSON_COOKIE)?.value;
  if (personId === undefined) return null;
  return findActor(shopDb(), personId) ?? null;
}

/** Remembers at this device whose name was chosen. */
export async function chooseActor(personId: string): Promise<void> {
  (await cookies()).set(PERSON_COOKIE, personId, {
    httpOnly: true,
    sameSite: 'lax',
    path: '/',
    maxAge: A_YEAR_SECONDS,
  });
}
