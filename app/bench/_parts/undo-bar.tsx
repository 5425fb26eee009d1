'use client';

import { type ReactNode, useEffect } from 'react';
import styles from './bench.module.css';
import type { Work } from './use-work';

interface UndoBarProps {
  readonly work: Work;
  readonly children: ReactNode;
}

/** What was counted, and for ten seconds the way to take the last thing back. As high with the button as without it. */
export function UndoBar({ work, children }: UndoBarProps) {
  const { undoable, dropUndo } = work;
  useEffect(() => {
    if (undoable === undefined) return;
    const timer = setTimeout(dropUndo, Math.max(0, undoable.untilMs - Date.now()));
    return () => clearTimeout(timer);
  }, [undoable, dropUndo]);
  return (
    <div className={styles.undo}>
      <div>
        {children}
        <p aria-live="polite">{undoable?.what}</p>
      </div>
      {undoable === undefined ? null : (
        <button
          type="button"
          onClick={() => {
            dropUndo();
            void undoable.undo();
          }}
        >
          Undo
        </button>
      )}
    </div>
  );
}
