import { count } from '@/app/_shared/format';
import { Button, NumberField, Panel, Select } from '@/app/_shared/ui';
import { materialWords } from '@/app/_shared/words/material-words';
import { dayLabel } from '@/lib/calendar/day-text';
import type { Outlook } from '@/lib/outlook/outlook';
import { connectionText } from '@/lib/shop/connection-text';
import type { Part } from '@/lib/shop/part';
import { type CutInHand, endsLeftOn, linesFor } from './cut-in-hand';

/** Asks the same question for another job, size or material. Plain links and a GET form: the address can be kept. */
export function AskForm({
  outlook,
  toolId,
  part,
  cut,
}: {
  outlook: Outlook;
  toolId: string;
  part: Part;
  cut: CutInHand;
}) {
  const lines = linesFor(outlook, part);
  const action = `/tools/${encodeURIComponent(toolId)}`;
  const own = outlook.facts.connections.filter(({ id }) => part.fitsConnectionIds.includes(id));
  return (
    <Panel title="For other work">
      <div className="stack">
        {lines.length > 0 ? (
          <form action={action} className="cluster">
            <Select
              name="line"
              label="Job"
              defaultValue={cut.line?.id}
              options={lines.map((line) => ({
                value: line.id,
                label: `${line.id}: ${count(endsLeftOn(line, part), 'end')}, starts ${dayLabel(line.startOnDay)}`,
              }))}
            />
            <Button type="submit">Show</Button>
          </form>
        ) : null}
        <form action={action} className="cluster">
          <Select
            name="connection"
            label="Size and service"
            defaultValue={cut.connection.id}
            options={own.map((connection) => ({ value: connection.id, label: connectionText(connection) }))}
          />
          <Select
            name="material"
            label="Material"
            defaultValue={cut.material.id}
            options={outlook.facts.materials.map((material) => ({
              value: material.id,
              label: materialWords(material),
            }))}
          />
          <NumberField
            id="ask-ends"
            name="ends"
            label="Ends"
            unit="ends"
            defaultValue={cut.line ? '' : (cut.ends ?? '')}
          />
          <Button type="submit">Show</Button>
        </form>
      </div>
    </Panel>
  );
}
