import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { HandText, SizeText } from '@/app/_shared/ui';
import type { BenchLine } from '@/lib/bench/bench-snapshot';
import styles from './bench.module.css';

/** Which line is at the vise: its end as drawn, size, hand, material, heat. */
export function WorkHead({ line }: { readonly line: BenchLine }) {
  const { connection } = line;
  return (
    <header className={styles.head}>
      <ConnectionEnd connection={connection} pxPerIn={64} decorative />
      <div>
        <h1>
          <SizeText odIn={connection.odNum / connection.odDen} service={connection.service} unit />,{' '}
          <HandText hand={connection.hand} />
        </h1>
        <p>
          {line.materialName}
          {line.heat === '' ? '' : `, heat ${line.heat}`} · {line.id}
        </p>
      </div>
    </header>
  );
}
