import { newStamp } from '@/app/_server/entry-stamp';
import { Cautions } from '@/app/_shared/cautions';
import { Panel } from '@/app/_shared/ui';
import type { ToolRow } from '@/db/queries/tools';
import { PiecesForm } from './pieces-form';

/** After a breakage: all pieces found, and where? Asked for each broken tool until it is answered. */
export function PiecesOwed({ tools }: { readonly tools: readonly ToolRow[] }) {
  const owed = tools.filter(({ pieces }) => pieces === 'owed');
  if (owed.length === 0) return null;
  return (
    <Panel title="All pieces found?">
      <div className="stack">
        <Cautions at="broken" />
        {owed.map(({ id }) => (
          <PiecesForm key={id} toolId={id} stamp={newStamp()} />
        ))}
      </div>
    </Panel>
  );
}
