'use client';

import { useState } from 'react';
import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
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
  readonly stamp: EntryStamp;
}

const CONDITIONS = [
  { value: 'ok', label: 'In order' },
  { value: 'dull', label: 'Dull' },
  { value: 'damaged', label: 'Chipped or broken' },
  { value: 'unsure', label: 'Set aside' },
] as const;

/**
 * Back by scanning: the last item scanned asks for its condition, in one tap; those scanned before it wait in hand, so that
 * a whole kit can be scanned in one go and, looked at and in order, taken back with one more. What is not of this kit says
 * so across the screen. With everything back it stays, so that what was just taken back can still be undone.
 */
export function KitReturn({ out, scanned, stamp }: KitReturnProps) {
  const [scannedIds, setScannedIds] = useState<readonly string[]>(scanned === undefined ? [] : [scanned]);
  const [stranger, setStranger] = useState<string | null>(null);
  const take = (typed: string) => {
    const item = out.find(({ id }) => toolKey(id) === toolKey(typed));
    if (item === undefined) setStranger(tidyToolId(typed));
    else setScannedIds((before) => [item.id, ...before.filter((id) => id !== item.id)]);
  };
  const scanner = useScanner(take, stranger !== null);
  const [item, ...others] = scannedIds.flatMap((id) => out.find((one) => one.id === id) ?? []);
  return (
    <div className="stack">
      {out.length === 0 ? null : <ScanField label="Scan what comes back" scanner={scanner} />}
      <EntryForm action={returnItemAction} stamp={stamp} label="Take an item back">
        {(_state, pending) =>
          item === undefined ? (
            <p className="quiet">
              {out.length === 0 ? 'Nothing of it is out any more.' : <StillOut items={out} />}
            </p>
          ) : (
            <div key={item.id} className={styles.inHand} aria-live="polite" aria-busy={pending}>
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
                    tone={value === 'ok' && others.length === 0 ? 'primary' : 'quiet'}
                  >
                    {label}
                  </SubmitButton>
                ))}
              </div>
              <label className="check">
                <input type="checkbox" name="piecesOwed" value="yes" />
                <span>Something broke off it: its pieces are to be found</span>
              </label>
              {others.length === 0 ? null : <Others items={others} />}
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

function StillOut({ items }: { readonly items: readonly Item[] }) {
  return (
    <>
      Still out: <Ids items={items} />
    </>
  );
}

function Others({ items }: { readonly items: readonly Item[] }) {
  return (
    <div className="stack-tight">
      <p>
        In hand, not taken back yet: <Ids items={items} />
      </p>
      {items.map(({ id }) => (
        <input key={id} type="hidden" name="also" value={id} />
      ))}
      <div>
        <SubmitButton name="all" value="yes">
          All {items.length + 1} looked at, in order
        </SubmitButton>
      </div>
    </div>
  );
}

/** IDs in a row, none of them broken at its dashes. */
function Ids({ items }: { readonly items: readonly Item[] }) {
  return items.map(({ id }, place) => (
    <span key={id}>
      {place === 0 ? null : ', '}
      <ToolId id={id} />
    </span>
  ));
}
