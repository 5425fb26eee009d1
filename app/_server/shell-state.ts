import 'server-only';
import { cookies } from 'next/headers';
import { shopDb, shopName } from '@/db/client';
import { findShop } from '@/db/queries/shop';
import { currentActor } from './session';

/** What the frame around every page shows. */
export interface ShellState {
  readonly shopName: string;
  readonly isDemo: boolean;
  readonly personName: string | null;
  readonly theme: 'light' | 'dark' | 'auto';
}

const THEMES = ['light', 'dark', 'auto'] as const;

export async function shellState(): Promise<ShellState> {
  const theme = (await cookies()).get('edgekeep-theme')?.value;
  return {
    shopName: findShop(shopDb())?.name ?? 'A shop not yet set up',
    isDemo: shopName() === 'demo',
    personName: (await currentActor())?.name ?? null,
    theme: THEMES.find((known) => known === theme) ?? 'auto',
  };
}
