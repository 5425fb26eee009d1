/** <LimitsView limits designation threadClass />: the table of limits and, beside it where there is room, the zones drawn to scale. */
import type { ExternalLimits } from '@/lib/thread/limits';
import { LimitsTable } from './limits-table';
import styles from './thread.module.css';
import { ZoneDrawing } from './zone-drawing';

interface Props {
  readonly limits: ExternalLimits;
  readonly designation: string;
  readonly threadClass: string;
}

export function LimitsView({ limits, designation, threadClass }: Props) {
  const which = `${designation}, class ${threadClass}`;
  return (
    <div className={styles.besides}>
      <LimitsTable limits={limits} caption={`Limits of size of ${which}`} />
      <ZoneDrawing limits={limits} title={`Tolerance zones of ${which}, below the basic sizes, to scale`} />
    </div>
  );
}
