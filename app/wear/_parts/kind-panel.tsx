import type { Route } from 'next';
import Link from 'next/link';
import { aboutBand, count, whole } from '@/app/_shared/format';
import { type Column, KeyValue, Panel, Table } from '@/app/_shared/ui';
import { warningWords } from '@/app/_shared/words/reason-words';
import {
  againstGuess,
  fasterWords,
  incidentWords,
  KIND_NOUN,
  longTailWords,
  regrindWords,
  shapeWords,
} from '@/app/_shared/words/wear-words';
import type { KindWear } from '@/lib/outlook/kind-wear';
import type { PartWear } from '@/lib/outlook/part-wear';
import { connectionText } from '@/lib/shop/connection-text';
import type { EdgeKind } from '@/lib/shop/vocabulary';

const TITLE: Record<EdgeKind, string> = { die: 'Dies', blade: 'Blades' };
const CUTS: Record<EdgeKind, string> = { die: 'thread', blade: 'cone' };

const TAKEN_OUT: Column<PartWear> = {
  key: 'good',
  header: 'Taken out good',
  numeric: true,
  cell: ({ counts }) => counts.removedWorking,
};

/** One kind of edge: typical life by part beside the first guess, and how its edges end. */
export function KindPanel({ wear, parts }: { wear: KindWear; parts: readonly PartWear[] }) {
  const { kind, seen } = wear;
  const cautions = warningWords(wear.warnings);
  const unknown = parts.reduce((sum, part) => sum + part.unknownStarts, 0);
  return (
    <Panel title={TITLE[kind]} aside={`${whole(wear.counts.worn)} worn out so far`}>
      <div className="stack">
        <PartTable kind={kind} parts={parts} />
        <p className="fine">
          Typical life of a new edge in the reference material: half last longer. In brackets, where it lies
          four times in five. Accidents and edges taken out good are not counted as wear.
          {unknown === 0
            ? ''
            : ` ${count(unknown, ...KIND_NOUN[kind])} already used when entered ${unknown === 1 ? 'is' : 'are'} left out.`}
        </p>
        {cautions.length === 0 ? null : <p className="quiet">Mind: {cautions.join('; ')}.</p>}
        <KeyValue
          items={[
            { label: 'How they end', value: shapeWords(wear) },
            { label: 'A few last far longer', value: longTailWords(wear) },
            { label: 'Accidents', value: incidentWords(wear) },
            ...(kind === 'blade' ? [{ label: 'After a regrind', value: regrindWords(wear) }] : []),
            { label: 'Cutting dry', value: fasterWords(wear.dry, { ends: seen.dryEnds, how: 'cut dry' }) },
            {
              label: 'Recutting',
              value: fasterWords(wear.rework, { ends: seen.reworkEnds, how: 'cut again' }),
            },
          ]}
        />
      </div>
    </Panel>
  );
}

function PartTable({ kind, parts }: { kind: EdgeKind; parts: readonly PartWear[] }) {
  return (
    <Table
      caption={`How long ${KIND_NOUN[kind][1]} last, by part`}
      rows={parts}
      rowKey={({ part }) => part.id}
      columns={[
        {
          key: 'part',
          header: 'Part',
          lead: true,
          cell: ({ part }) => (
            <Link href={`/wear/${encodeURIComponent(part.id)}` as Route} prefetch={false}>
              {part.name}
            </Link>
          ),
        },
        {
          key: 'life',
          header: 'Typical life by now',
          cell: (row) => (
            <>
              {aboutBand(row.typicalEnds)} {CUTS[kind]}s
              <span className="quiet"> of {connectionText(row.connection)}</span>
            </>
          ),
        },
        {
          key: 'guess',
          header: 'First guess',
          cell: (row) => {
            const said = againstGuess(row);
            if (row.guess === undefined) return 'none typed';
            return (
              <>
                {whole(row.guess.ends)}
                {said === '' ? null : <span className="quiet">, {said}</span>}
              </>
            );
          },
        },
        { key: 'worn', header: 'Worn out', numeric: true, cell: ({ counts }) => counts.worn },
        { key: 'lost', header: 'Accidents', numeric: true, cell: ({ counts }) => counts.incident },
        ...(parts.some(({ counts }) => counts.removedWorking > 0) ? [TAKEN_OUT] : []),
        { key: 'now', header: 'Still cutting', numeric: true, cell: ({ counts }) => counts.inService },
      ]}
    />
  );
}
