import type { Metadata } from 'next';
import { studyState } from '@/app/_server/study';
import { ButtonLink, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { listLifeGuesses } from '@/db/queries/tables';
import { listToolLogs } from '@/db/queries/tool-logs';
import { scoreSummary } from '@/lib/outlook/score-summary';
import { storedPredictions } from '@/lib/outlook/stored-predictions';
import { ReplayPanel } from './_parts/replay-panel';
import { ShownPanel } from './_parts/shown-panel';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Scorecard' };

/** The scorecard: how often what was said came true, of what was shown and of the whole log asked again. */
export default function ScorecardPage() {
  const db = shopDb();
  const shown = scoreSummary(storedPredictions(listToolLogs(db), listLifeGuesses(db)));
  return (
    <div className="page">
      <TitleBlock
        title="Scorecard"
        lead="How often was it right? What was said of a tool finishing its work, against what then happened."
        actions={<ButtonLink href="/wear">How long they last</ButtonLink>}
      />
      <ReplayPanel state={studyState('backtest')} />
      <ShownPanel summary={shown} />
    </div>
  );
}
