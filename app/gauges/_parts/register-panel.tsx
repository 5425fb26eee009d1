import Link from 'next/link';
import { dayText, sizeName } from '@/app/_shared/format';
import { Panel, Table, ToolId } from '@/app/_shared/ui';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { DueMark } from './due-mark';
import type { GaugeView } from './gauge-view';
import { dueWords, intervalInForce } from './gauge-words';

/** Every gauge of the shop, by size. */
export function RegisterPanel({
  views,
  today,
}: {
  readonly views: readonly GaugeView[];
  readonly today: string;
}) {
  const sizes = [...new Set(views.map(({ sizeIn }) => sizeIn))];
  return (
    <Panel title="Register" id="register">
      <div className="stack-loose">
        {sizes.map((sizeIn) => (
          <Table
            key={sizeIn ?? 'all'}
            caption={sizeIn === null ? 'For more than one size' : `${sizeName(sizeIn)} in`}
            captionShown
            rows={views.filter((view) => view.sizeIn === sizeIn)}
            rowKey={({ gauge }) => gauge.id}
            columns={[
              {
                key: 'id',
                header: 'Gauge',
                lead: true,
                cell: ({ gauge }) => (
                  <Link href={`/gauges/${encodeURIComponent(gauge.id)}`} prefetch={false}>
                    <ToolId id={gauge.id} />
                  </Link>
                ),
              },
              { key: 'kind', header: 'Kind', cell: ({ gauge }) => ROLE_LABEL[gauge.role] },
              {
                key: 'stands',
                header: 'May accept',
                cell: ({ gauge, due }) => <DueMark state={gauge.state} due={due} />,
              },
              { key: 'due', header: 'Due', cell: ({ gauge, due }) => dueWords(gauge.dueOnDay, due, today) },
              {
                key: 'last',
                header: 'Calibrated',
                cell: ({ gauge }) =>
                  gauge.calibratedOnDay === null
                    ? 'no certificate on record'
                    : dayText(gauge.calibratedOnDay, today),
              },
              { key: 'interval', header: 'Interval', cell: ({ gauge }) => intervalInForce(gauge) },
            ]}
          />
        ))}
      </div>
    </Panel>
  );
}
