import { timeZone } from '@/app/_server/clock';
import { clockText } from '@/app/_shared/format';
import { LookAgain } from '@/app/_shared/ui/look-again';

const LOOK_AGAIN_MS = 2000;

/**
 * Says that the figures of a page are of an earlier moment, while those of this moment are being worked out, and looks
 * again by itself. Nothing where they are of this moment. First on a page that shows figures of the outlook.
 */
export function FiguresNote({ asOfMs }: { readonly asOfMs: number | null }) {
  if (asOfMs === null) return null;
  return (
    <p className="figures-note" role="status">
      <b>Figures as of {clockText(asOfMs, timeZone())}.</b> Something was entered since; new figures are being
      worked out and will show here by themselves.
      <LookAgain everyMs={LOOK_AGAIN_MS} />
    </p>
  );
}
