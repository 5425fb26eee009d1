import type { Metadata } from 'next';
import { shopFacts } from '@/app/_server/outlook';
import { count } from '@/app/_shared/format';
import { ButtonLink, EmptyState, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { gaugeSettingsInForce } from '@/db/queries/shop';
import { JustDone } from '../tools/_parts/just-done';
import { DuePanel } from './_parts/due-panel';
import { gaugeViews } from './_parts/gauge-view';
import { mayAccept } from './_parts/gauge-words';
import { RegisterPanel } from './_parts/register-panel';
import { RuleNote } from './_parts/rule-note';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Gauges' };

/** The gauge register: what may accept and until when; what is due comes first. */
export default async function GaugesPage({ searchParams }: PageProps<'/gauges'>) {
  const facts = shopFacts();
  const views = gaugeViews(shopDb(), facts);
  const ready = views.filter(({ gauge, due }) => mayAccept(gauge, due) !== 'no').length;
  const aside = views.filter(({ gauge }) => gauge.state === 'quarantined').length;
  return (
    <div className="page">
      <TitleBlock
        title="Gauges"
        lead="What may accept, and until when."
        cells={[
          { label: 'May accept today', value: `${ready} of ${count(views.length, 'gauge')}` },
          { label: 'Set aside', value: aside === 0 ? 'none' : count(aside, 'gauge') },
        ]}
        actions={
          <>
            <ButtonLink href="/gauges/stickers">Print stickers</ButtonLink>
            <ButtonLink href="/recalls">Recalls</ButtonLink>
          </>
        }
      />
      <JustDone entryId={(await searchParams).done} />
      {views.length === 0 ? (
        <EmptyState
          title="No gauge is in the record yet"
          action={
            <ButtonLink href="/tools/receive" tone="primary">
              Receive a gauge
            </ButtonLink>
          }
        >
          Rings, plugs, cone and length gauges, micrometers, wires and torque wrenches are received like any
          tool; their due days then stand here.
        </EmptyState>
      ) : (
        <>
          <DuePanel views={views} today={facts.today} />
          <RegisterPanel views={views} today={facts.today} />
          <RuleNote settings={gaugeSettingsInForce(shopDb())} />
        </>
      )}
    </div>
  );
}
