import { chanceWords, estimatedMoney } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui';
import { regrindSentence } from '@/app/_shared/words/replace-words';
import type { PartReplacement } from '@/lib/replacement/part-replacement';

interface RegrindTableProps {
  readonly parts: readonly PartReplacement[];
  readonly currency: string;
}

/** Regrind or buy: what 100 ends cost with a new edge and with one after each regrind. */
export function RegrindTable({ parts, currency }: RegrindTableProps) {
  const most = Math.max(0, ...parts.map(({ part }) => part.regrindLimit));
  const cost = ({ regrind, perEnd }: PartReplacement, regrinds: number) => {
    const edge = regrind?.edges[regrinds];
    if (edge === undefined) return 'not possible';
    return (
      <>
        {estimatedMoney(edge.costRate * 100 * perEnd, currency)}
        <br />
        <span className="fine">
          {edge.cheaperThanNew === null ? '' : `${chanceWords(edge.cheaperThanNew)} that new is dearer`}
        </span>
      </>
    );
  };
  return (
    <Table
      caption="What 100 ends cost with a new blade and after each regrind"
      captionShown
      rows={parts}
      rowKey={({ part }) => part.id}
      columns={[
        { key: 'part', header: 'Blade', lead: true, cell: ({ part }) => part.name },
        ...Array.from({ length: most + 1 }, (_, regrinds) => ({
          key: `edge-${regrinds}`,
          header: edgeName(regrinds),
          cell: (found: PartReplacement) => cost(found, regrinds),
        })),
        { key: 'best', header: 'So', cell: regrindSentence },
      ]}
    />
  );
}

function edgeName(regrinds: number): string {
  return regrinds === 0 ? 'New' : regrinds === 1 ? 'After 1 regrind' : `After ${regrinds}`;
}
