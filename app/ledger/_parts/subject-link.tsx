import type { Route } from 'next';
import Link from 'next/link';
import { ToolId } from '@/app/_shared/ui';
import type { Names } from '@/app/_shared/words/entry-words';
import type { EntryView } from '@/db/queries/entries';

/** What an entry is about, linked to its page where it has one. */
export function SubjectLink({ entry, names }: { entry: EntryView; names: Names }) {
  const { subjectKind, subjectId } = entry;
  switch (subjectKind) {
    case 'tool':
      return (
        <Link href={`/tools/${encodeURIComponent(subjectId)}`} prefetch={false}>
          <ToolId id={subjectId} />
        </Link>
      );
    case 'job':
      return (
        <Link href={`/plan/jobs/${encodeURIComponent(subjectId)}` as Route} prefetch={false}>
          job {subjectId}
        </Link>
      );
    case 'connection':
      return (
        <Link href={`/sizes/${encodeURIComponent(subjectId)}` as Route} prefetch={false}>
          {names.connection(subjectId)}
        </Link>
      );
    case 'order':
      return (
        <Link href={'/plan/orders' as Route} prefetch={false}>
          order {subjectId}
        </Link>
      );
    case 'person':
      return names.person(subjectId);
    case 'material':
      return names.material(subjectId);
    default:
      return subjectKind === 'shop' ? 'the shop' : `part ${subjectId}`;
  }
}
