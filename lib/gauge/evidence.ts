import type { AsFound, Calibration } from '../shop/calibration';
import type { CertificateFile } from '../shop/gauge-entry';

/**
 * One thing that says whether a gauge was good: a calibration, or a check in the shop. Kept on the gauge's record in the
 * order in which it was entered.
 */
export interface GaugeEvidence {
  readonly entryId: string;
  readonly kind: 'calibration' | 'interim';
  /** The day it was measured; for a laboratory that lies before the day it was entered. */
  readonly onDay: string;
  /** When it was entered, by the server's clock. */
  readonly atMs: number;
  /** A check has no other "found" than its result. A calibration that does not say: not taken. */
  readonly asFound: AsFound;
  readonly asLeft: 'in' | 'out';
  /** Whether it may open a review window: a calibration does; a check only when documented so that it counts. */
  readonly qualifies: boolean;
  /** The master of a check. */
  readonly againstToolId: string | null;
  /** The whole content of a calibration. */
  readonly calibration: Calibration | null;
  /** The certificate as filed, where it was. */
  readonly file: Omit<CertificateFile, 'calibrationId'> | null;
}
