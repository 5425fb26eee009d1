import { newStamp } from '@/app/_server/entry-stamp';
import { Panel } from '@/app/_shared/ui';
import { CloseForm, LossForm, SearchForm } from './kit-close-forms';

interface KitCloseProps {
  readonly kitId: string;
  readonly outIds: readonly string[];
  readonly missing: readonly string[];
}

/** Putting a kit away: complete in one press, or a search for what is missing, or closed with a loss that somebody approves. */
export function KitClose({ kitId, outIds, missing }: KitCloseProps) {
  if (outIds.length === 0)
    return (
      <Panel title="Everything is back">
        <CloseForm kitId={kitId} stamp={newStamp()} />
      </Panel>
    );
  return (
    <Panel title="Something missing?">
      <div className="stack">
        <details open={missing.length > 0}>
          <summary>Search for it</summary>
          <SearchForm kitId={kitId} outIds={outIds} missing={missing} stamp={newStamp()} />
        </details>
        <details>
          <summary>Close it with a loss</summary>
          <LossForm kitId={kitId} outIds={outIds} stamp={newStamp()} />
        </details>
      </div>
    </Panel>
  );
}
