'use client';
import type { Route } from 'next';
import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { isLit, NAV } from './nav';
import { NavIcon } from './nav-icon';
import styles from './nav-links.module.css';

/** The navigation: tabs under the header, a bar at the foot of a phone. Knows which page it is on, nothing else. */
export function NavLinks() {
  const pathname = usePathname();
  return (
    <nav className={`${styles.nav} no-print`} aria-label="Main">
      <ul>
        {NAV.map((item) => (
          <li key={item.href} className={item.onPhone ? undefined : styles.notOnPhone}>
            <Link href={item.href as Route} aria-current={isLit(pathname, item) ? 'page' : undefined}>
              <NavIcon name={item.icon} />
              {item.label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
