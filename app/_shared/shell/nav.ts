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
  /** Pages with an address of their own that belong to it. */
  readonly also?: readonly string[];
}

export const NAV: readonly NavItem[] = [
  { href: '/', label: 'Today', icon: 'today', onPhone: true },
  { href: '/bench', label: 'Bench', icon: 'bench', onPhone: true, also: ['/accept'] },
  { href: '/crib', label: 'Crib', icon: 'crib', onPhone: true },
  { href: '/plan', label: 'Plan', icon: 'plan', onPhone: true, also: ['/calendar'] },
  { href: '/tools', label: 'Tools', icon: 'tools', onPhone: false },
  { href: '/gauges', label: 'Gauges', icon: 'gauges', onPhone: false, also: ['/recalls'] },
  { href: '/fluid', label: 'Fluid', icon: 'fluid', onPhone: false },
  { href: '/ledger', label: 'Log', icon: 'log', onPhone: false },
  { href: '/rooms', label: 'All pages', icon: 'rooms', onPhone: true },
];

/** Whether a page belongs to a navigation item, and lights it. */
export function isLit(pathname: string, { href, also = [] }: NavItem): boolean {
  return [href, ...also].some((address) => isUnder(pathname, address));
}

/** '/' is only itself, the others stand for everything below them. */
function isUnder(pathname: string, href: string): boolean {
  return href === '/' ? pathname === '/' : pathname === href || pathname.startsWith(`${href}/`);
}
