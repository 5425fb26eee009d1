/** The navigation, in trade words. Order is the order on screen; `icon` names a drawing in nav-icon.tsx. */
export type NavIconName =
  | 'today'
  | 'bench'
  | 'crib'
  | 'plan'
  | 'tools'
  | 'gauges'
  | 'fluid'
  | 'log'
  | 'rooms';

export interface NavItem {
  readonly href: string;
  readonly label: string;
  readonly icon: NavIconName;
  /** Stands in the bar at the foot of a phone, where there is room for five. */
  readonly onPhone: boolean;
}

export const NAV: readonly NavItem[] = [
  { href: '/', label: 'Today', icon: 'today', onPhone: true },
  { href: '/bench', label: 'Bench', icon: 'bench', onPhone: true },
  { href: '/crib', label: 'Crib', icon: 'crib', onPhone: true },
  { href: '/plan', label: 'Plan', icon: 'plan', onPhone: true },
  { href: '/tools', label: 'Tools', icon: 'tools', onPhone: false },
  { href: '/gauges', label: 'Gauges', icon: 'gauges', onPhone: false },
  { href: '/fluid', label: 'Fluid', icon: 'fluid', onPhone: false },
  { href: '/ledger', label: 'Log', icon: 'log', onPhone: false },
  { href: '/rooms', label: 'All pages', icon: 'rooms', onPhone: true },
];

/** Whether a page belongs under a navigation item: '/' only itself, the others with everything below them. */
export function isUnder(pathname: string, href: string): boolean {
  return href === '/' ? pathname === '/' : pathname === href || pathname.startsWith(`${href}/`);
}
