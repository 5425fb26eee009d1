'use client';

import { count } from '@/app/_shared/format';
import { Button } from '@/app/_shared/ui';
import type { Bench } from '../_offline/use-bench';
import styles from './bench.module.css';

/** A clock this far off is worth a word: what is sent is set right all the same. */
const CLOCK_WORTH_SAYING_MS = 120_000;

interface SyncLineProps {
  readonly bench: Bench;
  readonly opensOffline: boolean | undefined;
  readonly personName: string | null;
}

/** Whether there is a network, of when the figures are, what waits to be sent, and whose name it goes under. */
export function SyncLine({ bench, opensOffline, personName }: SyncLineProps) {
  const { state, last } = bench;
  const waiting = state?.outbox.length ?? 0;
  const asOfMs = state?.snapshot?.asOfMs;
  const behindMs = state?.clockBehindMs ?? 0;
  const cut = last?.reached === false;
  return (
    <div className={styles.sync} data-cut={cut ? 'yes' : 'no'}>
      <p role="status">
        {cut ? <b>No network. </b> : null}
        {asOfMs === undefined ? 'Nothing kept on this device yet.' : `As of ${clock(asOfMs + -behindMs)}.`}{' '}
        {waiting === 0 ? null : `${count(waiting, 'entry', 'entries')} to send. `}
        {cut
          ? 'What changed elsewhere since, a gauge set aside or a tool taken back, cannot be known here.'
          : null}
      </p>
      {personName === null || (last?.reached && last.needsName) ? (
        <div className={styles.ask}>
          <p>Nothing is sent under nobody’s name.</p>
          <a className={styles.link} href="/who">
            Choose your name
          </a>
        </div>
      ) : null}
      {last?.reached && last.conflicts.length > 0 ? (
        <div role="alert" className={styles.ask}>
          <p>{last.conflicts[0]} It waits to be settled.</p>
          <a className={styles.link} href="/bench/conflicts">
            Settle it
          </a>
        </div>
      ) : null}
      {Math.abs(behindMs) > CLOCK_WORTH_SAYING_MS ? (
        <p>
          The clock of this device is {offText(behindMs)}. What is sent is set right; set the clock when you
          can.
        </p>
      ) : null}
      {opensOffline === false ? (
        <div className={styles.ask}>
          <p className="fine">
            This page goes on working without network while it is open. To open it there too, use the shop’s
            https address.
          </p>
          <a className={styles.link} href="/trust">
            How
          </a>
        </div>
      ) : null}
      {cut ? <Button onClick={() => void bench.sync()}>Try again</Button> : null}
    </div>
  );
}

function clock(ms: number): string {
  return new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' }).format(ms);
}

function offText(behindMs: number): string {
  const minutes = Math.round(Math.abs(behindMs) / 60_000);
  const amount =
    minutes < 120 ? count(minutes, 'minute') : `about ${count(Math.round(minutes / 60), 'hour')}`;
  return `${amount} ${behindMs > 0 ? 'slow' : 'fast'}`;
}
