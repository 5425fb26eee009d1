import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { type LengthUnit, lengthText } from '@/app/_shared/format';
import { ButtonLink, HandText, KeyValue, Panel, SizeText, VerdictMark } from '@/app/_shared/ui';
import type { SizeStatus } from '@/lib/capability/size-status';
import type { Connection } from '@/lib/shop/noun';
import { threadDesignation } from '@/lib/thread/designation';
import { exposureOfEnd } from '@/lib/wear/connection-exposure';

/** One size and service on a sheet of its own: drawn to scale, its figures, what an end costs an edge. */
export function SizeSheet({
  connection,
  status,
  unit,
}: {
  connection: Connection;
  status: SizeStatus | undefined;
  unit: LengthUnit;
}) {
  const { odNum, odDen, tpi, hand, threadClass, threadLengthMm, noseMm, coneAngleDeg } = connection;
  const sizeIn = { num: odNum, den: odDen };
  const turns = exposureOfEnd({ operation: 'thread', connection });
  const volumeMm3 = exposureOfEnd({ operation: 'cone', connection });
  return (
    <Panel
      id={connection.id}
      title={<SizeText odIn={odNum / odDen} service={connection.service} />}
      aside={status ? <VerdictMark verdict={status.verdict} /> : 'not in use'}
    >
      <div className="columns">
        <ConnectionEnd connection={connection} view="drawing" unit={unit} pxPerIn={150} />
        <KeyValue
          items={[
            {
              label: 'Thread',
              value: `${threadDesignation({ sizeIn, tpi, hand }).screenText}, class ${threadClass}`,
            },
            { label: 'Hand', value: <HandText hand={hand} /> },
            {
              label: 'Thread length',
              value: `${lengthText(threadLengthMm, unit)}, ${turns.toFixed(1)} turns an end`,
            },
            {
              label: 'Cone',
              value: `${coneAngleDeg}° included, nose ${lengthText(noseMm, unit)}, ${Math.round(volumeMm3)} mm³ an end`,
            },
            {
              label: 'NOT GO may run on',
              value:
                connection.notGoTurnsMax === null
                  ? 'no rule set'
                  : `at most ${connection.notGoTurnsMax} turns`,
            },
            {
              label: 'Row',
              value: connection.confirmed
                ? 'checked against the maker’s manual'
                : 'example, not yet confirmed',
            },
          ]}
        />
      </div>
      <p className="no-print">
        <ButtonLink href={`/sizes/${connection.id}`}>
          {connection.confirmed ? 'Change the row' : 'Confirm or change the row'}
        </ButtonLink>
      </p>
    </Panel>
  );
}
