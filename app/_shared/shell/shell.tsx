/** The sheet's frame: skip link, header, navigation, the page, footer. Takes everything it shows as props. */
import type { Route } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { BenchNote } from './bench-note';
import { FindBox } from './find-box';
import { Footer } from './footer';
import { HouseMark } from './house-mark';
import { NavLinks } from './nav-links';
import styles from './shell.module.css';
import type { Theme } from './theme';

export interface ShellProps {
  readonly shopName: string;
  readonly isDemo: boolean;
  readonly personName: string | null;
  readonly theme: Theme;
  readonly toSettle: number;
  readonly children: ReactNode;
}

export function Shell({ shopName, isDemo, personName, theme, toSettle, children }: ShellProps) {
  return (
    <>
      <a className={styles.skip} href="#main">
        Skip to the page
      </a>
      <header className={styles.header}>
        <div className={styles.top}>
          <Link href={'/' as Route} className={styles.brand}>
            <HouseMark />
            <span>
              <span className={styles.wordmark}>Edgekeep</span>
              <span className={styles.shop}>
                <span>{shopName}</span> {isDemo ? <span className={styles.demo}>demo</span> : null}
              </span>
            </span>
          </Link>
          <FindBox />
          <Link href={'/who' as Route} className={`${styles.who} no-print`}>
            {personName ? (
              <>
                <span className="vh">Acting as </span>
                <b>{personName}</b> <span className={styles.change}>change</span>
              </>
            ) : (
              <b>Choose your name</b>
            )}
          </Link>
        </div>
        <BenchNote toSettle={toSettle} />
        <NavLinks />
      </header>
      <main id="main" tabIndex={-1} className={styles.main}>
        {children}
      </main>
      <Footer theme={theme} />
    </>
  );
}
