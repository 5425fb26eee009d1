'use client';

import { useScanner } from '@/app/_shared/form/use-scanner';
import { CameraScan } from '@/app/_shared/scan/camera-scan';
import { Button } from '@/app/_shared/ui';
import styles from './bench.module.css';

interface BenchScanProps {
  readonly onScan: (typed: string) => void;
  /** Takes a tool out of the crib for the line in hand; without network it is sent later. */
  readonly onTake: (toolId: string, lineId: string) => void;
  /** What was scanned last and is not out for any work kept here. */
  readonly stranger: string | undefined;
  /** The line in hand, for which a stranger is looked up. */
  readonly lineId: string | undefined;
}

/** Scan or type any tool: one that is out opens its work, any other its own page with the verdict for the line in hand. */
export function BenchScan({ onScan, onTake, stranger, lineId }: BenchScanProps) {
  const scanner = useScanner(onScan, false);
  return (
    <form
      className={styles.scan}
      onSubmit={(event) => {
        event.preventDefault();
        scanner.enter();
      }}
    >
      <label className="vh" htmlFor="bench-scan">
        Scan a tool
      </label>
      <input
        id="bench-scan"
        ref={scanner.box}
        type="text"
        value={scanner.typed}
        placeholder="Scan a tool"
        autoComplete="off"
        autoCapitalize="characters"
        autoCorrect="off"
        spellCheck={false}
        enterKeyHint="go"
        onChange={(event) => scanner.setTyped(event.target.value)}
      />
      {scanner.typed === '' ? (
        <CameraScan onScan={scanner.take} label="Camera" />
      ) : (
        <Button type="submit">Go</Button>
      )}
      {stranger === undefined ? null : (
        <div role="alert" className={styles.stranger}>
          <p>
            <b>{stranger}</b> is not out for any work that this device knows.
          </p>
          {lineId === undefined ? null : (
            <Button onClick={() => onTake(stranger, lineId)}>Take {stranger} for this work</Button>
          )}
          <a className={styles.link} href={toolAddress(stranger, lineId)}>
            {lineId === undefined ? `Look up ${stranger}` : `See ${stranger} for this work`}
          </a>
        </div>
      )}
    </form>
  );
}

/** The page of a tool, asked for one line. */
export function toolAddress(toolId: string, lineId: string | undefined): string {
  const asked = lineId === undefined ? '' : `?line=${encodeURIComponent(lineId)}`;
  return `/tools/${encodeURIComponent(toolId)}${asked}`;
}
