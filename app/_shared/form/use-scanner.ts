'use client';

import { useCallback, useEffect, useRef, useState } from 'react';

/** Where typing belongs to whoever typed it: a scanner may write over nothing here. */
const TEXT_FIELDS =
  'textarea, select, [contenteditable], input:not([type="checkbox"], [type="radio"], [type="button"], [type="submit"])';

/**
 * A hand scanner types fast and ends with Enter. Whatever is typed outside a text field goes into the scan box, so that nobody
 * has to put the cursor there first; also after a press on a button or a box to tick, which the scanner's Enter would else
 * press again. While held, nothing is taken, and what was half typed is dropped.
 */
export function useScanner(onScan: (scanned: string) => void, held: boolean) {
  const box = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState('');

  useEffect(() => {
    if (held) return setTyped('');
    const redirectKeys = (event: KeyboardEvent) => {
      const at = document.activeElement;
      const inField = at instanceof HTMLElement && at.matches(TEXT_FIELDS);
      const isText = event.key.length === 1 && event.key !== ' ';
      if (inField || !isText || event.ctrlKey || event.metaKey || event.altKey) return;
      box.current?.focus();
    };
    document.addEventListener('keydown', redirectKeys);
    return () => document.removeEventListener('keydown', redirectKeys);
  }, [held]);

  /** What was read some other way, by the camera: taken as if it had been typed. */
  const take = useCallback(
    (scanned: string) => {
      if (scanned !== '' && !held) onScan(scanned);
    },
    [held, onScan],
  );

  const enter = useCallback(() => {
    setTyped('');
    take(typed.trim());
  }, [typed, take]);

  return { box, typed, setTyped, enter, take };
}
