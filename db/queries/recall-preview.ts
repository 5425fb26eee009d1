import { type RecallWindow, recallWindow } from '../../lib/recall/recall-window';
import { listSuspects, type RecallList } from '../../lib/recall/suspect-looks';
import type { Role } from '../../lib/shop/vocabulary';
import type { Db } from '../open';
import { looksWithGauge } from './gauge-looks';
import { listEvidence } from './gauges';
import { findTool } from './tools';

/** What a recall of a gauge would list. */
export interface RecallPreview extends RecallList {
  readonly gaugeId: string;
  readonly role: Role;
  readonly window: RecallWindow;
}

/** What a recall would list if it were opened for this finding, or, without one, for a fault seen on that day. */
export function previewRecall(
  db: Db,
  typedId: string,
  foundEntryId: string | null,
  onDay: string,
): RecallPreview | undefined {
  const gauge = findTool(db, typedId);
  if (gauge === undefined) return undefined;
  const evidence = listEvidence(db, gauge.id);
  const shown = evidence.find(({ entryId }) => entryId === foundEntryId);
  const found = shown ?? { entryId: null, onDay, atMs: Number.MAX_SAFE_INTEGER };
  const window = recallWindow(evidence, found);
  const list = listSuspects(looksWithGauge(db, gauge.id), window);
  return { gaugeId: gauge.id, role: gauge.role, window, ...list };
}
