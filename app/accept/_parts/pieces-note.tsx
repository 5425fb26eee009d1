import Link from 'next/link';
import { listWords } from '@/app/_shared/format';
import { Notice } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { listPiecesMissing } from '@/db/queries/pieces-owed';

/** Something broke off a tool that cut for this line and has not been found: it may lie in one of the tubes. */
export function PiecesNote({ lineId }: { readonly lineId: string }) {
  const missing = listPiecesMissing(shopDb(), lineId);
  if (missing.length === 0) return null;
  const ids = listWords(missing.map(({ toolId }) => toolId));
  const [first] = missing;
  return (
    <Notice level="warning" title={`Pieces of ${ids} are missing.`}>
      Release no end that it cut until every bore was looked through with a light.{' '}
      {first === undefined ? null : (
        <Link href={`/tools/${encodeURIComponent(first.toolId)}`} prefetch={false}>
          Pieces found?
        </Link>
      )}
    </Notice>
  );
}
