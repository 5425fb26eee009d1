import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopFacts } from '@/app/_server/outlook';
import { currentActor } from '@/app/_server/session';
import { ButtonLink, Panel } from '@/app/_shared/ui';
import { JustDone } from '@/app/tools/_parts/just-done';
import { shopDb } from '@/db/client';
import { AsItStood } from '../_parts/as-it-stood';
import { gaugeViews } from '../_parts/gauge-view';
import paper from '../_parts/paper.module.css';
import styles from './_parts/card.module.css';
import { DropForm } from './_parts/check-forms';
import { CheckPanel } from './_parts/check-panel';
import { EvidencePanel } from './_parts/evidence-panel';
import { cardOf } from './_parts/gauge-card';
import { GaugeHead } from './_parts/gauge-head';
import { ReviewPanel } from './_parts/review-panel';
import { WarningPanel } from './_parts/warning-panel';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/gauges/[id]'>): Promise<Metadata> {
  return { title: decodeURIComponent((await params).id) };
}

/** One gauge: may it accept, what says so, what stands in the way, and how long its calibration should be good for. */
export default async function GaugePage({ params, searchParams }: PageProps<'/gauges/[id]'>) {
  const id = decodeURIComponent((await params).id);
  const facts = shopFacts();
  const views = gaugeViews(shopDb(), facts);
  const view = views.find(({ gauge }) => gauge.id.toLowerCase() === id.toLowerCase());
  if (view === undefined) notFound();
  const { gauge } = view;
  const asked = await searchParams;
  const card = cardOf(shopDb(), { view, views, facts, askedDays: asked.days });
  const who = (await currentActor())?.name ?? 'of whoever decides it';
  const about = { toolId: gauge.id, today: facts.today };
  return (
    <div className={`page ${paper.paper}`}>
      <GaugeHead view={view} facts={facts} />
      <AsItStood />
      <JustDone entryId={asked.done} />
      <WarningPanel view={view} today={facts.today} {...card} />
      <div className={styles.card}>
        <div className={`stack-loose no-print ${styles.deeds}`}>
          {gauge.state === 'quarantined' || gauge.state === 'lost' ? null : (
            <Panel title="After a knock">
              <DropForm {...about} stamp={newStamp()} />
            </Panel>
          )}
          <CheckPanel view={view} card={card} today={facts.today} />
          <ButtonLink href={`/tools/${encodeURIComponent(gauge.id)}`}>Custody and history</ButtonLink>
        </div>
        <div className={`stack-loose ${styles.record}`}>
          <EvidencePanel
            toolId={gauge.id}
            evidence={card.evidence}
            inForce={card.inForce}
            doubtedIn={card.doubtedIn}
          />
          <ReviewPanel view={view} {...card} who={who} />
        </div>
      </div>
    </div>
  );
}
