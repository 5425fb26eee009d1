import type { Metadata } from 'next';
import { studyState } from '@/app/_server/study';
import { ButtonLink, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { listJobLogs, listOrdersPlaced } from '@/db/queries/job-logs';
import { listLifeGuesses } from '@/db/queries/tables';
import { listToolLogs } from '@/db/queries/tool-logs';
import { linePredictions } from '@/lib/outlook/line-predictions';
import { scoreSummary } from '@/lib/outlook/score-summary';
import { storedPredictions } from '@/lib/outlook/stored-predictions';
import { ReplayPanel } from './_parts/replay-panel';
import { LinesShownPanel, ShownPanel } from './_parts/shown-panel';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Scorecard' };

/** The scorecard: how often what was said came true, of what was shown and of the whole log asked again. */
export default function ScorecardPage() {
  const db = shopDb();
  const logs = listToolLogs(db);
  const tools = scoreSummary(storedPredictions(logs, listLifeGuesses(db)));
  const lines = scoreSummary(linePredictions(listJobLogs(db), logs, listOrdersPlaced(db)));
  return (
    <div className="page">
      <TitleBlock
        title="Scorecard"
        lead="How often was it right? What was said of tools and of lines of the plan, against what then happened."
        actions={<ButtonLink href="/wear">How long they last</ButtonLink>}
      />
      <ReplayPanel state={studyState('backtest')} />
      <ShownPanel summary={tools} />
      <LinesShownPanel summary={lines} />
    </div>
  );
}
