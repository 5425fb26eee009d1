import type { Route } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { momentText } from '@/app/_shared/format';
import { Table, ToolId } from '@/app/_shared/ui';
import type { Names } from '@/app/_shared/words/entry-words';
import { INDEPENDENT_WORDS, outcomeWords, usedThenWords } from '@/app/_shared/words/trace-words';
import { CHECK_KIND_LABEL } from '@/lib/shop/acceptance';
import type { EndTrace, TracedEdge } from '@/lib/trace/end-trace';
import type { TracedCut } from '@/lib/trace/traced-cut';

interface WorkTableProps {
  readonly trace: EndTrace;
  readonly cuts: readonly TracedCut[];
  readonly names: Names;
  readonly moment: (ms: number) => string;
}

interface Step {
  readonly what: string;
  readonly who: string;
  readonly when: string;
  readonly with: ReactNode;
}

/** Who coned, threaded and gauged it, when, and with what. Coning and threading are read from the cut log by count. */
export function WorkTable({ trace, cuts, names, moment }: WorkTableProps) {
  return (
    <Table
      caption="Who did what, when, with what"
      rows={steps({ trace, cuts, names, moment })}
      rowKey={({ what, when }) => `${what} ${when}`}
      columns={[
        { key: 'what', header: 'What', lead: true, cell: ({ what }) => what },
        { key: 'who', header: 'Who', cell: ({ who }) => <span className="num">{who}</span> },
        { key: 'when', header: 'When', cell: ({ when }) => <span className="num">{when}</span> },
        { key: 'with', header: 'With', cell: (step) => step.with },
      ]}
    />
  );
}

function steps({ trace, cuts, names, moment }: WorkTableProps): Step[] {
  const [first] = trace.looks;
  const cutStep = (operation: 'cone' | 'thread', kind: 'blade' | 'die', edge: TracedEdge | null): Step => {
    const row = cuts.find((one) => one.operation === operation);
    const agrees = row !== undefined && (edge === null || edge.toolId === row.toolId);
    return {
      what: operation === 'cone' ? 'Coned' : 'Threaded',
      who: agrees ? names.person(row.personId) : 'not known',
      when: agrees ? moment(row.cutAtMs) : 'not known',
      with: <EdgeWords kind={kind} edge={edge} />,
    };
  };
  const looks = trace.looks.map(
    (look, at): Step => ({
      what: at === 0 ? 'Gauged' : 'Gauged again',
      who: names.person(look.personId),
      when: moment(look.gaugedAtMs),
      with: `${CHECK_KIND_LABEL[look.checkKind]}, ${INDEPENDENT_WORDS[look.independentCheck]}: ${outcomeWords(look)}`,
    }),
  );
  const { operations } = trace;
  return [
    ...(operations.includes('cone') ? [cutStep('cone', 'blade', first?.blade ?? null)] : []),
    ...(operations.includes('thread') ? [cutStep('thread', 'die', first?.die ?? null)] : []),
    ...looks,
  ];
}

function EdgeWords({ kind, edge }: { readonly kind: 'die' | 'blade'; readonly edge: TracedEdge | null }) {
  if (edge === null) return <>{kind} not written down</>;
  return (
    <>
      <Link href={`/tools/${encodeURIComponent(edge.toolId)}` as Route} prefetch={false}>
        <ToolId id={edge.toolId} />
      </Link>
      {edge.lot === '' ? '' : `, lot ${edge.lot}`}; {usedThenWords(kind, edge)}
    </>
  );
}

/** A moment of the shop's day, with the year: a trace is read years later. */
export function momentWords(ms: number, timeZone: string): string {
  return momentText(ms, timeZone);
}
