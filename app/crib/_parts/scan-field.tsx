'use client';

import type { useScanner } from '@/app/_shared/form/use-scanner';
import { CameraScan } from '@/app/_shared/scan/camera-scan';
import { Button } from '@/app/_shared/ui';
import styles from './crib.module.css';

interface ScanFieldProps {
  readonly label: string;
  readonly scanner: ReturnType<typeof useScanner>;
  readonly busy?: boolean;
}

/** The box of a counter screen that a hand scanner, or a hand, types into; Enter takes it. */
export function ScanField({ label, scanner, busy = false }: ScanFieldProps) {
  return (
    <div className={styles.scan}>
      <label htmlFor="scan-box">{label}</label>
      <div className={styles.scanRow}>
        <input
          id="scan-box"
          ref={scanner.box}
          type="text"
          value={scanner.typed}
          // biome-ignore lint/a11y/noAutofocus: a hand scanner types into whatever has the focus
          autoFocus
          autoComplete="off"
          autoCapitalize="characters"
          autoCorrect="off"
          spellCheck={false}
          aria-busy={busy}
          onChange={(event) => scanner.setTyped(event.target.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            scanner.enter();
          }}
        />
        <Button onClick={scanner.enter}>Take</Button>
      </div>
      <CameraScan keepOpen onScan={scanner.take} />
    </div>
  );
}
