'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { NumberField, SubmitButton } from '@/app/_shared/ui';
import type { EdgeKind } from '@/lib/shop/vocabulary';
import { setBeliefAction } from '../actions';
import type { BeliefRow } from './belief-rows';
import styles from './wear.module.css';

interface BeliefFormProps {
  readonly kind: EdgeKind;
  readonly rows: readonly BeliefRow[];
  /** Figures that are sent along without being asked. */
  readonly unseen: Readonly<Record<string, string>>;
  readonly stamp: EntryStamp;
}

/** What is believed of one kind of edge before the log speaks, each figure with how sure it is. */
export function BeliefForm({ kind, rows, unseen, stamp }: BeliefFormProps) {
  return (
    <EntryForm
      action={setBeliefAction}
      stamp={stamp}
      label={`What is believed of ${kind === 'die' ? 'dies' : 'blades'}`}
    >
      <input type="hidden" name="kind" value={kind} />
      {Object.entries(unseen).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <div className={styles.rows}>
        {rows.map(({ name, words, label, value, unit, giveOrTake }) => {
          const first = giveOrTake === undefined ? name : `${name}.typical`;
          const second = `${name}.giveOrTake`;
          return (
            <div key={name} className={styles.row}>
              <p>{words}</p>
              <NumberField
                name={first}
                id={`${kind}-${first}`}
                label={label}
                entry="decimal"
                unit={unit}
                defaultValue={value}
                answers={`belief.${first}`}
              />
              {giveOrTake === undefined ? null : (
                <NumberField
                  name={second}
                  id={`${kind}-${second}`}
                  label="Give or take a factor of"
                  entry="decimal"
                  unit="×"
                  defaultValue={giveOrTake}
                  answers={`belief.${second}`}
                />
              )}
            </div>
          );
        })}
      </div>
      <div>
        <SubmitButton>Save for {kind === 'die' ? 'dies' : 'blades'}</SubmitButton>
      </div>
    </EntryForm>
  );
}
