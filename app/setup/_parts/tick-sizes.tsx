'use client';

import { useGivenBack } from '@/app/_shared/form/given-back';
import { FieldError } from '@/app/_shared/ui';
import styles from './setup.module.css';
import type { SizeTile } from './size-tiles';

/** Tiles to tick: which sizes the shop works in. */
export function TickSizes({ sizes }: { readonly sizes: readonly SizeTile[] }) {
  const { error } = useGivenBack({ name: 'connectionIds', start: undefined });
  return (
    <fieldset className={styles.sizes} aria-describedby={error ? 'f-connectionIds-error' : undefined}>
      <legend>Sizes in use</legend>
      <div className={styles.tiles}>
        {sizes.map(({ id, face }) => (
          <label key={id} className={styles.tile}>
            <input type="checkbox" name="connectionIds" value={id} />
            {face}
          </label>
        ))}
      </div>
      <FieldError id="f-connectionIds" error={error} />
      <p className="fine">
        The dimensions that come with a size are examples. Confirm them in the fitting maker’s manual before
        anything is cut to them.
      </p>
    </fieldset>
  );
}
