'use client';

import { useState } from 'react';
import { EntryForm } from '@/app/_shared/form/entry-form';
import { useScanner } from '@/app/_shared/form/use-scanner';
import { SubmitButton, ToolId } from '@/app/_shared/ui';
import { tidyToolId, toolKey } from '@/lib/shop/tool-id';
import { returnItemAction } from '../actions';
import styles from './crib.module.css';
import { ScanField } from './scan-field';
import { StopScreen } from './stop-screen';

interface Item {
  readonly id: string;
  readonly label: string;
}

interface KitReturnProps {
  readonly out: readonly Item[];
  readonly scanned: string | undefined;
  readonly stamp: { entryId: string; deviceAtMs: number; shop?: string };
}

const CONDITIONS = [
  { value: 'ok', label: 'In order' },
  { value: 'dull', label: 'Dull' },
  { value: 'damaged', label: 'Chipped or broken' },
  { value: 'unsure', label: 'Set aside' },
] as const;

/** Back by scanning: each item, then its condition in one tap. What is not of this kit says so across the screen. */
export function KitReturn({ out, scanned, stamp }: KitReturnProps) {
  const [inHand, setInHand] = useState<string | undefined>(scanned);
  const [stranger, setStranger] = useState<string | null>(null);
  const take = (typed: string) => {
    const item = out.find(({ id }) => toolKey(id) === toolKey(typed));
    if (item === undefined) setStranger(tidyToolId(typed));
    else setInHand(item.id);
  };
  const scanner = useScanner(take, stranger !== null);
  const item = out.find(({ id }) => id === inHand);
  return (
    <div className="stack">
      <ScanField label="Scan what comes back" scanner={scanner} />
      <EntryForm action={returnItemAction} stamp={stamp} label="Take an item back">
        {(_state, pending) =>
          item === undefined ? (
            <p className="quiet">Still out: {out.map(({ id }) => id).join(', ')}</p>
          ) : (
            <div className={styles.inHand} aria-live="polite" aria-busy={pending}>
              <p>
                {item.label} <ToolId id={item.id} />
              </p>
              <input type="hidden" name="toolId" value={item.id} />
              <div className={styles.conditions}>
                {CONDITIONS.map(({ value, label }) => (
                  <SubmitButton
                    key={value}
                    name="condition"
                    value={value}
                    tone={value === 'ok' ? 'primary' : 'quiet'}
                  >
                    {label}
                  </SubmitButton>
                ))}
              </div>
              <label className="check">
                <input type="checkbox" name="piecesOwed" value="yes" />
                <span>Something broke off it: its pieces are to be found</span>
              </label>
            </div>
          )
        }
      </EntryForm>
      {stranger === null ? null : (
        <StopScreen
          headline="NOT OF THIS KIT"
          sentence={`${stranger} did not go out with this kit, or is back already.`}
          onSeen={() => {
            setStranger(null);
            scanner.box.current?.focus();
          }}
        />
      )}
    </div>
  );
}
