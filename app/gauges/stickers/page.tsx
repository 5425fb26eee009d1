import type { Metadata } from 'next';
import { shopFacts } from '@/app/_server/outlook';
import { dayText } from '@/app/_shared/format';
import { Breadcrumb, EmptyState, TitleBlock, ToolId } from '@/app/_shared/ui';
import { PrintButton } from '@/app/_shared/ui/print-button';
import { shopDb } from '@/db/client';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { type GaugeView, gaugeViews } from '../_parts/gauge-view';
import { mayAccept } from '../_parts/gauge-words';
import styles from './stickers.module.css';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Gauge stickers' };

/** Stickers to print: which gauge, calibrated on, due on, by whom; what may not accept says so instead. */
export default async function StickersPage({ searchParams }: PageProps<'/gauges/stickers'>) {
  const asked = (await searchParams).gauge;
  const views = gaugeViews(shopDb(), shopFacts()).filter(
    ({ gauge }) => gauge.state !== 'lost' && (asked === undefined || gauge.id === asked),
  );
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/gauges', label: 'Gauges' }]} here="Stickers" />
      <TitleBlock
        title="Gauge stickers"
        lead="One for each gauge. Print, cut, and take the old one off."
        actions={<PrintButton tone="primary" />}
      />
      {views.length === 0 ? (
        <EmptyState title="No such gauge">Choose one from the register.</EmptyState>
      ) : (
        <ul className={styles.sheet}>
          {views.map((view) => (
            <Sticker key={view.gauge.id} view={view} />
          ))}
        </ul>
      )}
    </div>
  );
}

function Sticker({ view: { gauge, due } }: { readonly view: GaugeView }) {
  const use = mayAccept(gauge, due) !== 'no';
  const ends = gauge.interval?.intervalEnds ?? null;
  return (
    <li className={styles.sticker} data-use={use ? 'yes' : 'no'}>
      <span className={styles.head}>
        <ToolId id={gauge.id} />
        <span className={styles.word}>{use ? 'CALIBRATED' : 'DO NOT USE'}</span>
      </span>
      <span>{ROLE_LABEL[gauge.role]}</span>
      <dl className={styles.facts}>
        <dt>Calibrated on</dt>
        <dd>{gauge.calibratedOnDay === null ? 'not on record' : dayText(gauge.calibratedOnDay)}</dd>
        <dt>Due on</dt>
        <dd>{gauge.dueOnDay === null ? 'not in date' : `${dayText(gauge.dueOnDay)}, end of day`}</dd>
        {ends === null ? null : (
          <>
            <dt>Or after</dt>
            <dd>{ends} ends</dd>
          </>
        )}
        <dt>By</dt>
        <dd>{gauge.laboratory ?? 'not written down'}</dd>
      </dl>
    </li>
  );
}
