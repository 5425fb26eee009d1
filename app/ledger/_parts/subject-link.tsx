import type { Route } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { ToolId } from '@/app/_shared/ui';
import type { Names } from '@/app/_shared/words/entry-words';
import type { EntryView } from '@/db/queries/entries';
import type { SubjectKind } from '@/lib/ledger/event';

interface Subject {
  readonly href?: string;
  readonly said: ReactNode;
}

/** What an entry is about, linked to its page where it has one. */
export function SubjectLink({ entry, names }: { entry: EntryView; names: Names }) {
  const { href, said } = SUBJECT[entry.subjectKind](entry, names);
  if (href === undefined) return said;
  return (
    <Link href={href as Route} prefetch={false}>
      {said}
    </Link>
  );
}

const SUBJECT: Record<SubjectKind, (entry: EntryView, names: Names) => Subject> = {
  tool: ({ subjectId }) => ({ href: at('/tools', subjectId), said: <ToolId id={subjectId} /> }),
  job: ({ subjectId }) => ({ href: at('/plan/jobs', subjectId), said: `job ${subjectId}` }),
  order: ({ subjectId }) => ({ href: at('/plan/orders', subjectId), said: `order ${subjectId}` }),
  connection: ({ subjectId }, names) => ({
    href: at('/sizes', subjectId),
    said: names.connection(subjectId),
  }),
  material: ({ subjectId }, names) => ({
    href: at('/sizes/materials', subjectId),
    said: names.material(subjectId),
  }),
  part: ({ subjectId }) => ({ href: at('/parts', subjectId), said: `part ${subjectId}` }),
  guess: ({ subjectId }) => ({ href: at('/parts', subjectId), said: `part ${subjectId}` }),
  kit: (entry) => ({ href: at('/crib/kits', entry.subjectId), said: `kit${forLine(entry)}` }),
  acceptance: (entry) => {
    const lineId = lineOf(entry);
    return { href: lineId === '' ? '/accept' : at('/accept', lineId), said: `ends${ofLine(entry)}` };
  },
  recall: ({ subjectId }) => ({ href: at('/recalls', subjectId), said: `recall ${subjectId}` }),
  'fluid-lot': ({ subjectId }) => ({
    href: '/fluid/register',
    said: `fluid lot ${subjectId.slice(subjectId.lastIndexOf('/') + 1)}`,
  }),
  count: () => ({ href: '/crib/count', said: 'stock-take' }),
  conflict: () => ({ href: '/bench/conflicts', said: 'to settle' }),
  costs: () => ({ href: '/plan/costs', said: 'costs' }),
  belief: () => ({ href: '/wear', said: 'wear' }),
  'reading-settings': () => ({ href: '/wear', said: 'inspection' }),
  'gauge-settings': () => ({ href: '/setup#gauges', said: 'gauges' }),
  person: ({ subjectId }, names) => ({ said: names.person(subjectId) }),
  shop: () => ({ href: '/setup', said: 'the shop' }),
};

function at(folder: string, id: string): string {
  return `${folder}/${encodeURIComponent(id)}`;
}

/** The line of the plan that an entry names; empty where it names none, as one that takes another back. */
function lineOf({ payload }: EntryView): string {
  return typeof payload.jobLineId === 'string' ? payload.jobLineId : '';
}

function forLine(entry: EntryView): string {
  const lineId = lineOf(entry);
  return lineId === '' ? '' : ` for ${lineId}`;
}

function ofLine(entry: EntryView): string {
  const lineId = lineOf(entry);
  return lineId === '' ? '' : ` of ${lineId}`;
}
