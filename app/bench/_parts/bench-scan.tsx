'use client';

import { useState } from 'react';
import { Button } from '@/app/_shared/ui';
import styles from './bench.module.css';

/** Scan or type any tool that is out for the work: opens the work with it. */
export function BenchScan({
  onScan,
  stranger,
}: {
  readonly onScan: (typed: string) => void;
  readonly stranger: string | undefined;
}) {
  const [typed, setTyped] = useState('');
  const take = () => {
    if (typed.trim() !== '') onScan(typed.trim());
    setTyped('');
  };
  return (
    <form
      className={styles.scan}
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <label className="vh" htmlFor="bench-scan">
        Scan a tool of the work in hand
      </label>
      <input
        id="bench-scan"
        type="text"
        value={typed}
        placeholder="Scan a tool"
        autoComplete="off"
        autoCapitalize="characters"
        autoCorrect="off"
        spellCheck={false}
        enterKeyHint="go"
        onChange={(event) => setTyped(event.target.value)}
      />
      <Button type="submit">Go</Button>
      {stranger === undefined ? null : (
        <p role="alert" className={styles.stranger}>
          <b>{stranger}</b> is not out for any work that this device knows.{' '}
          <a href={`/tools/${encodeURIComponent(stranger)}`}>Look it up</a>
        </p>
      )}
    </form>
  );
}
