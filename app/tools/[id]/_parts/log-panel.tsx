import { newStamp } from '@/app/_server/entry-stamp';
import { count } from '@/app/_shared/format';
import { Notice, Panel } from '@/app/_shared/ui';
import { materialWords } from '@/app/_shared/words/material-words';
import type { ToolRow } from '@/db/queries/tools';
import type { Outlook } from '@/lib/outlook/outlook';
import { connectionText } from '@/lib/shop/connection-text';
import type { Part } from '@/lib/shop/part';
import { type CutInHand, endsLeftOn, linesFor } from './cut-in-hand';
import { LogCutForm } from './log-cut-form';

/** Logging what was cut, with the cautions that belong to it. */
export function LogPanel({
  outlook,
  tool,
  part,
  cut,
}: {
  outlook: Outlook;
  tool: ToolRow;
  part: Part;
  cut: CutInHand;
}) {
  if (tool.state !== 'in-crib' && tool.state !== 'issued') return null;
  const operation = tool.role === 'blade' ? 'cone' : 'thread';
  const { connections, materials, shop } = outlook.facts;
  return (
    <Panel title={operation === 'cone' ? 'Log cones' : 'Log threads'}>
      <div className="stack">
        <LogCutForm
          toolId={tool.id}
          operation={operation}
          stamp={newStamp()}
          connections={connections
            .filter(({ id }) => part.fitsConnectionIds.includes(id))
            .map((connection) => ({ value: connection.id, label: connectionText(connection) }))}
          materials={materials.map((material) => ({ value: material.id, label: materialWords(material) }))}
          lines={linesFor(outlook, part).map((line) => ({
            value: line.id,
            label: `${line.id}: ${count(endsLeftOn(line, part), 'end')} to make`,
          }))}
          first={{
            connectionId: cut.connection.id,
            materialId: cut.material.id,
            jobLineId: cut.line?.id ?? '',
            heat: '',
            unit: shop?.units ?? 'in',
            ends: '',
          }}
        />
        <Notice level="caution" sign="eye-protection" title="Eyes on.">
          Safety glasses with side shields. Brush chips away, never by hand; the edge cuts skin.
        </Notice>
      </div>
    </Panel>
  );
}
