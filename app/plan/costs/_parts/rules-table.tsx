import { estimatedMoney } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui';
import type { RuleCost } from '@/lib/end-costs/rule-costs';
import { cheaperWords, ruleWords } from './rule-words';

interface RulesProps {
  readonly rows: readonly RuleCost[];
  readonly nameOf: (partId: string) => string;
  readonly currency: string;
}

/** Both rules by part: what they led to on the edges of the log, and what a hundred ends cost. */
export function RulesTable({ rows, nameOf, currency }: RulesProps) {
  const per100 = (minor: number | null) => (minor === null ? 'not known' : estimatedMoney(minor, currency));
  return (
    <Table
      caption="Changing by the estimate and by a fixed count, by part"
      phone="scroll"
      rows={rows}
      rowKey={({ partId }) => partId}
      columns={[
        { key: 'part', header: 'Part', lead: true, cell: ({ partId }) => nameOf(partId) },
        { key: 'edges', header: 'Edges', numeric: true, cell: ({ edges }) => edges },
        { key: 'ours', header: 'By the estimate', cell: ({ predicted }) => ruleWords(predicted) },
        { key: 'fixed', header: 'At a fixed count', cell: ({ fixed }) => ruleWords(fixed) },
        {
          key: 'ours100',
          header: '100 ends, estimate',
          numeric: true,
          cell: ({ predictedPer100Minor }) => per100(predictedPer100Minor),
        },
        {
          key: 'fixed100',
          header: '100 ends, count',
          numeric: true,
          cell: ({ fixedPer100Minor }) => per100(fixedPer100Minor),
        },
        { key: 'so', header: 'Cheaper', cell: cheaperWords },
      ]}
    />
  );
}
