'use server';
import { cookies } from 'next/headers';
import { parseTheme, THEME_COOKIE } from './theme';

const ONE_YEAR_S = 365 * 24 * 3600;

/** Keeps the choice of paper on this device. Touches nothing of the shop's. */
export async function setTheme(form: FormData): Promise<void> {
  const store = await cookies();
  store.set(THEME_COOKIE, parseTheme(form.get('theme')), {
    path: '/',
    maxAge: ONE_YEAR_S,
    sameSite: 'lax',
    httpOnly: true,
  });
}
