import 'server-only';
import { cookies } from 'next/headers';
import { parseTheme, THEME_COOKIE, type Theme } from '@/app/_shared/shell/theme';
import { shopDb, shopName } from '@/db/client';
import { listOpenConflicts } from '@/db/queries/conflicts';
import { findShop } from '@/db/queries/shop';
import { currentActor } from './session';

/** What the frame around every page shows. */
export interface ShellState {
  readonly shopName: string;
  readonly isDemo: boolean;
  readonly personName: string | null;
  readonly theme: Theme;
  /** Entries of benches that the record could not take, and that nobody has settled. */
  readonly toSettle: number;
}

export async function shellState(): Promise<ShellState> {
  return {
    shopName: findShop(shopDb())?.name ?? 'A shop not yet set up',
    isDemo: shopName() === 'demo',
    personName: (await currentActor())?.name ?? null,
    theme: parseTheme((await cookies()).get(THEME_COOKIE)?.value),
    toSettle: listOpenConflicts(shopDb()).length,
  };
}
