import type { ShopMoment } from '../../lib/gauge/last-good-evidence';
import { type RecallWindow, recallWindow } from '../../lib/recall/recall-window';
import { listSuspects, type RecallList } from '../../lib/recall/suspect-looks';
import type { Role } from '../../lib/shop/vocabulary';
import type { Db } from '../open';
import { looksWithGauge } from './gauge-looks';
import { listEvidence } from './gauges';
import { countedEvidence } from './master-recalls';
import { findTool } from './tools';

/** What a recall of a gauge would list. */
export interface RecallPreview extends RecallList {
  readonly gaugeId: string;
  readonly role: Role;
  readonly window: RecallWindow;
}

/**
 * What a recall would list if it were opened for this finding, or, without one, for a fault seen on that day. `until`: up to
 * when the gauge is in doubt through its master, where that is earlier.
 */
export function previewRecall(
  db: Db,
  typedId: string,
  foundEntryId: string | null,
  onDay: string,
  until?: ShopMoment,
): RecallPreview | undefined {
  const gauge = findTool(db, typedId);
  if (gauge === undefined) return undefined;
  const evidence = countedEvidence(db, listEvidence(db, gauge.id));
  const shown = evidence.find(({ entryId }) => entryId === foundEntryId);
  const found = shown ?? { onDay, atMs: Number.MAX_SAFE_INTEGER, ...until, entryId: null };
  const window = recallWindow(evidence, found);
  const list = listSuspects(looksWithGauge(db, gauge.id), window);
  return { gaugeId: gauge.id, role: gauge.role, window, ...list };
}
