'use client';

import { useEffect } from 'react';
import styles from './bench.module.css';
import type { Work } from './use-work';

/** The last thing done, for ten seconds: one press takes it back. */
export function UndoBar({ work }: { readonly work: Work }) {
  const { undoable, dropUndo } = work;
  useEffect(() => {
    if (undoable === undefined) return;
    const timer = setTimeout(dropUndo, Math.max(0, undoable.untilMs - Date.now()));
    return () => clearTimeout(timer);
  });
  return (
    <div className={styles.undo} aria-live="polite">
      {undoable === undefined ? null : (
        <>
          <span>{undoable.what}</span>
          <button
            type="button"
            onClick={() => {
              dropUndo();
              void undoable.undo();
            }}
          >
            Undo
          </button>
        </>
      )}
    </div>
  );
}
