import { ReliabilityChart } from '@/app/_shared/charts/reliability-chart';
import { factorText, share } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui';
import { binJudgement, binSentence, coverageSentence } from '@/app/_shared/words/score-words';
import type { ScoreSummary } from '@/lib/outlook/score-summary';
import type { ReliabilityBin, Score } from '@/lib/score/scored-case';

/** What was said against what happened: the diagram, and its figures beside it. */
export function SaidAgainstHappened({ bins }: { bins: readonly ReliabilityBin[] }) {
  return (
    <div className="columns">
      <ReliabilityChart
        title="Said against happened"
        summary="Marks on the dashed line: what was said is what happened. Above it, it was too cautious; below, too hopeful."
        bins={bins}
      />
      <BinTable bins={bins} />
    </div>
  );
}

/** Group by group, in words first. */
function BinTable({ bins }: { bins: readonly ReliabilityBin[] }) {
  return (
    <Table
      caption="What was said against what happened"
      rows={bins}
      rowKey={({ predicted }) => String(predicted)}
      columns={[
        { key: 'said', header: 'In words', lead: true, cell: binSentence },
        { key: 'count', header: 'Cases', numeric: true, cell: ({ count: cases }) => cases },
        {
          key: 'band',
          header: 'Could be, by chance',
          cell: ({ low, high }) => `${share(low, 1)} to ${share(high, 1)}`,
        },
        { key: 'judged', header: 'Judged', cell: binJudgement },
      ]}
    />
  );
}

interface Row {
  readonly name: string;
  readonly score: Score | undefined;
  readonly wrong: number;
}

/** Ours beside the shop's fixed count on the same cases. */
export function ScoreTable({ summary }: { summary: ScoreSummary }) {
  const { card, wrong, coverage } = summary;
  const rows: Row[] = [
    { name: 'This estimate', score: card.oursOnSame, wrong: wrong.ours },
    { name: 'Change at the fixed count', score: card.fixedCount, wrong: wrong.fixedCount },
  ];
  return (
    <div className="stack">
      <Table
        caption="The estimate beside the fixed count, on the same cases"
        rows={rows}
        rowKey={({ name }) => name}
        columns={[
          { key: 'name', header: 'Forecaster', lead: true, cell: ({ name }) => name },
          { key: 'cases', header: 'Cases', numeric: true, cell: ({ score }) => score?.count ?? 0 },
          {
            key: 'wrong',
            header: 'Called wrong',
            numeric: true,
            cell: (row) => share(row.wrong, wrong.cases),
          },
          {
            key: 'brier',
            header: 'Brier score',
            numeric: true,
            cell: ({ score }) => (score === undefined ? 'none yet' : score.brier.toFixed(3)),
          },
          {
            key: 'skill',
            header: 'Skill',
            numeric: true,
            cell: ({ score }) => (score === undefined ? 'none yet' : factorText(score.skill)),
          },
          {
            key: 'error',
            header: 'Calibration error',
            numeric: true,
            cell: ({ score }) =>
              score === undefined ? 'none yet' : score.reliability.calibrationError.toFixed(3),
          },
        ]}
      />
      <p className="fine">
        Brier score: 0 is a clairvoyant, 0.25 always says one half. Skill: 0 is no better than always saying
        how often ends get finished here, 1 is perfect. Calibration error: how far what was said lies from
        what happened, on average. The bands of ends left: {coverageSentence(coverage)}. Edges that still cut
        are missing from these, so they lean short.
      </p>
    </div>
  );
}
