import { newStamp } from '@/app/_server/entry-stamp';
import { currentActor } from '@/app/_server/session';
import { Cautions } from '@/app/_shared/cautions';
import { count } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { materialWords } from '@/app/_shared/words/material-words';
import { shopDb } from '@/db/client';
import { lastFluidUsed } from '@/db/queries/last-fluid';
import type { ToolRow } from '@/db/queries/tools';
import { serviceCautionPlaces } from '@/lib/cautions';
import { fluidsToChoose, likelyFluid } from '@/lib/outlook/fluid-choice';
import { fluidWork } from '@/lib/outlook/fluid-facts';
import type { Outlook } from '@/lib/outlook/outlook';
import { connectionText } from '@/lib/shop/connection-text';
import type { Part } from '@/lib/shop/part';
import { type CutInHand, endsLeftOn, linesFor } from './cut-in-hand';
import { LogCutForm } from './log-cut-form';

/** Logging what was cut, with the cautions that belong to it. */
export async function LogPanel({
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
  const fluids = fluidsToChoose(outlook.facts);
  const person = (await currentActor())?.personId;
  const lastUsedId = lastFluidUsed(shopDb(), { personId: person, toolId: tool.id });
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
          fluids={fluids.map(({ id, name }) => ({ value: id, label: `${id}, ${name}` }))}
          first={{
            connectionId: cut.connection.id,
            materialId: cut.material.id,
            jobLineId: cut.line?.id ?? '',
            heat: '',
            unit: shop?.units ?? 'in',
            ends: '',
            fluidId: likelyFluid(fluids, { materialId: cut.material.id, lastUsedId }) ?? '',
          }}
        />
        <Cautions at="cutting" signals="hidden" />
        {serviceCautionPlaces(
          fluidWork(outlook.facts, { materialId: cut.material.id, duty: cut.line?.duty }),
        ).map((place) => (
          <Cautions key={place} at={place} />
        ))}
      </div>
    </Panel>
  );
}
