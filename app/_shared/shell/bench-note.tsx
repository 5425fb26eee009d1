'use client';

import type { Route } from 'next';
import Link from 'next/link';
import { usePathname, useRouter } from 'next/navigation';
import { type ReactNode, useEffect, useState } from 'react';
import { count } from '../format';
import styles from './bench-note.module.css';
import { type BenchMail, watchBenchMail } from './watch-bench-mail';

/**
 * Under the header of every page but the bench, which says it itself: what was pressed there and is not sent, and what of it the
 * record could not take. What was sent stays said until the next page, so that nothing moves under a finger.
 */
export function BenchNote({ toSettle }: { readonly toSettle: number }) {
  const pathname = usePathname();
  const router = useRouter();
  const [mail, setMail] = useState<BenchMail>();
  const atBench = pathname === '/bench';
  // biome-ignore lint/correctness/useExhaustiveDependencies: each page looks anew
  useEffect(() => {
    if (atBench) return setMail(undefined);
    return watchBenchMail({ tell: setMail, onSent: () => router.refresh() });
  }, [pathname, atBench, router]);
  return (
    <div className={`${styles.note} no-print`} aria-live="polite">
      {atBench ? null : (
        <BenchNoteWords mail={mail} toSettle={pathname === '/bench/conflicts' ? 0 : toSettle} />
      )}
    </div>
  );
}

interface BenchNoteWordsProps {
  readonly mail: BenchMail | undefined;
  readonly toSettle: number;
}

/** What the note says; nothing, where there is nothing to say. */
export function BenchNoteWords({ mail, toSettle }: BenchNoteWordsProps) {
  const { waiting, sent, reached, needsName } = mail ?? {
    waiting: 0,
    sent: 0,
    reached: true,
    needsName: false,
  };
  if (waiting + sent + toSettle === 0) return null;
  return (
    <p>
      {waiting > 0 ? (
        <Link href={'/bench' as Route} prefetch={false}>
          <Shape d="M10 13V3.5M5.8 7.7 10 3.5l4.2 4.2M3 12v5h14v-5" />
          {count(waiting, 'bench entry', 'bench entries')} to send{reached ? '' : ', no network'}
        </Link>
      ) : null}
      {waiting > 0 && needsName ? <Link href={'/who' as Route}>Choose your name to send</Link> : null}
      {waiting === 0 && sent > 0 ? (
        <span>
          <Shape d="M3.5 10.5l4.5 4.5 8.5-10" />
          {count(sent, 'bench entry', 'bench entries')} sent
        </span>
      ) : null}
      {toSettle > 0 ? (
        <Link href={'/bench/conflicts' as Route} prefetch={false}>
          <Shape d="M10 2.5 17.5 10 10 17.5 2.5 10ZM10 6.5v4M10 12.5v1" />
          {toSettle} to settle
        </Link>
      ) : null}
    </p>
  );
}

function Shape({ d }: { readonly d: string }): ReactNode {
  return (
    <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
      <path d={d} fill="none" stroke="currentColor" strokeWidth="1.75" strokeLinejoin="round" />
    </svg>
  );
}
