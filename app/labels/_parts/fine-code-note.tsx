import { codeSymbol } from '@/app/_shared/codes/code-symbol';
import { listWords } from '@/app/_shared/format';
import { Notice } from '@/app/_shared/ui';
import { CODE_KIND_LABEL } from '@/lib/labels/code-kind';
import { layOutLabel } from '@/lib/labels/label-layout';
import type { LabelQuestion } from './label-question';

/** Says so where a code comes out finer than an ordinary printer and scanner are good for. */
export function FineCodeNote({
  question,
  labels,
}: {
  readonly question: LabelQuestion;
  readonly labels: readonly { readonly id: string }[];
}) {
  const { stock, codeKind } = question;
  const tooFine = labels.filter(({ id }) => {
    const { across, upright } = codeSymbol(codeKind, id);
    const size = { widthMm: stock.labelWidthMm, heightMm: stock.labelHeightMm };
    return !layOutLabel({ ...size, codeKind, codeAcross: across, codeUpright: upright, idLength: id.length })
      .isCoarseEnough;
  });
  if (tooFine.length === 0) return null;
  return (
    <Notice level="notice" title={`${CODE_KIND_LABEL[codeKind]} comes out very fine on this label.`}>
      A Data Matrix is coarser on the same room, and so is a larger label. Try one before printing:{' '}
      {listWords(tooFine.slice(0, 5).map(({ id }) => id))}.
    </Notice>
  );
}
