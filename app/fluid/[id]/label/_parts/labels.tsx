import { GhsPictogram } from '@/app/_shared/ui/ghs-pictogram';
import type { FluidLabel } from '@/lib/fluid/label';
import styles from './label.module.css';

/** The bottle's label: what it is, its days, its hazards in words and pictograms, and where its sheet is. */
export function BottleLabel({ label }: { readonly label: FluidLabel }) {
  return (
    <section className={styles.bottle} aria-label="Label of the bottle">
      <div className={styles.head}>
        <strong className={styles.name}>{label.identifier}</strong>
        <span className={styles.id}>{label.toolId}</span>
      </div>
      <p>
        lot {label.lot === '' ? 'not written down' : label.lot} · opened {label.openedOnDay ?? '____-__-__'} ·
        use by <b>{label.useByDay ?? 'not written down'}</b>
      </p>
      <div className={styles.hazards}>
        {label.pictograms.map((code) => (
          <span key={code} className={styles.pictogram}>
            <GhsPictogram code={code} />
          </span>
        ))}
        <div>
          {label.signal === null || label.signal === 'none' ? null : (
            <strong className={styles.signal}>{label.signal.toUpperCase()}</strong>
          )}
          <p>{label.unknown ?? hazardWords(label)}</p>
        </div>
      </div>
      <p>{label.chlorinated}</p>
      <p>{label.sds}</p>
    </section>
  );
}

/** The dropper's label: the same words, what fits of them. */
export function DropperLabel({ label }: { readonly label: FluidLabel }) {
  return (
    <section className={styles.dropper} aria-label="Label of the dropper">
      <strong>
        {label.identifier} · {label.toolId}
      </strong>
      <div className={styles.hazards}>
        {label.pictograms.map((code) => (
          <span key={code} className={styles.small}>
            <GhsPictogram code={code} />
          </span>
        ))}
        <p>
          {label.signal === null || label.signal === 'none' ? '' : `${label.signal.toUpperCase()}: `}
          {label.unknown ?? hazardWords(label)}
        </p>
      </div>
    </section>
  );
}

function hazardWords({ hazards }: FluidLabel): string {
  return hazards.length === 0 ? 'no hazard statement on the SDS' : `${hazards.join('. ')}.`;
}
