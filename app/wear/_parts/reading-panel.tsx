import Link from 'next/link';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Panel } from '@/app/_shared/ui';
import { DEFAULT_READING_SETTINGS, type ReadingSettings } from '@/lib/reading/reading-settings';
import { ReadingForm } from './reading-form';
import { readingRows } from './reading-rows';

interface ReadingPanelProps {
  readonly settings: ReadingSettings | undefined;
  readonly stamp: EntryStamp;
}

/** How what is seen of an edge counts, with where each figure comes from; and where the confidence of safe ends stands. */
export function ReadingPanel({ settings, stamp }: ReadingPanelProps) {
  return (
    <Panel title="How readings count" id="readings">
      <div className="stack">
        <p>
          A wear land, a pitch diameter, a ring or a look says how much of a life is used up, and how far that
          may be out. It moves the figures of that one edge, up as well as down.
        </p>
        <details>
          <summary>
            {settings === undefined
              ? 'This project’s default, not set by your shop'
              : `Set by your shop: a wear land of ${settings.landLimitMm} mm is worn out`}
          </summary>
          <ReadingForm rows={readingRows(settings ?? DEFAULT_READING_SETTINGS)} stamp={stamp} />
        </details>
        <p className="fine">
          How sure “safe ends” are is no matter of readings: it is the certainty that the shop asks of
          ordinary work, and stands <Link href="/setup">under Set-up</Link>. A tool’s own page also shows it
          for 80, 90 and 95 %.
        </p>
      </div>
    </Panel>
  );
}
