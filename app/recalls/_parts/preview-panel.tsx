import { count } from '@/app/_shared/format';
import { Figure, Panel } from '@/app/_shared/ui';
import type { RecallPreview } from '@/db/queries/recall-preview';
import { windowWords } from './window-words';

/** How many ends would be listed, and since when. */
export function PreviewPanel({ seen, today }: { readonly seen: RecallPreview; readonly today: string }) {
  const ends = seen.suspects.reduce((sum, { endCount }) => sum + endCount, 0);
  return (
    <Panel title="What it accepted">
      <Figure
        value={ends}
        unit={ends === 1 ? 'end' : 'ends'}
        note={`accepted with it ${windowWords(seen.window, today)}`}
      />
      <p className="quiet">
        The day it falls due has no part in this.
        {seen.refusedIds.length === 0
          ? ''
          : ` It refused ends at ${count(seen.refusedIds.length, 'look')} too.`}
      </p>
    </Panel>
  );
}
