'use client';

import { useCallback, useEffect, useRef, useState } from 'react';

/**
 * A hand scanner types fast and ends with Enter. Whatever is typed outside a field goes into the scan box, so that nobody
 * has to put the cursor there first.
 */
export function useScanner(onScan: (scanned: string) => void, held: boolean) {
  const box = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState('');

  useEffect(() => {
    const redirectKeys = (event: KeyboardEvent) => {
      const at = document.activeElement;
      const inField = at instanceof HTMLElement && at.matches('input, textarea, select, button, a, summary');
      if (held || inField || event.key.length !== 1 || event.ctrlKey || event.metaKey || event.altKey) return;
      box.current?.focus();
    };
    document.addEventListener('keydown', redirectKeys);
    return () => document.removeEventListener('keydown', redirectKeys);
  }, [held]);

  const enter = useCallback(() => {
    const scanned = typed.trim();
    setTyped('');
    if (scanned !== '' && !held) onScan(scanned);
  }, [typed, held, onScan]);

  return { box, typed, setTyped, enter };
}
