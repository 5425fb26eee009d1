/** The navigation, in trade words. Order is the order on screen; `icon` names a drawing in nav-icon.tsx. */
export type NavIconName = 'today' | 'tools' | 'plan' | 'log' | 'sizes' | 'import' | 'setup';

export interface NavItem {
  readonly href: string;
  readonly label: string;
  readonly icon: NavIconName;
}

export const NAV: readonly NavItem[] = [
  { href: '/', label: 'Today', icon: 'today' },
  { href: '/tools', label: 'Tools', icon: 'tools' },
  { href: '/plan', label: 'Plan', icon: 'plan' },
  { href: '/ledger', label: 'Log', icon: 'log' },
  { href: '/sizes', label: 'Sizes', icon: 'sizes' },
  { href: '/import', label: 'Import', icon: 'import' },
  { href: '/setup', label: 'Set-up', icon: 'setup' },
];

/** Whether a page belongs under a navigation item: '/' only itself, the others with everything below them. */
export function isUnder(pathname: string, href: string): boolean {
  return href === '/' ? pathname === '/' : pathname === href || pathname.startsWith(`${href}/`);
}
