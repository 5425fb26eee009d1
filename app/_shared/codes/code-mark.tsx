/** <CodeMark kind="qr" text="D-38-11" sideMm={18} />: a code in black on white with its quiet margin, as large as said, for paper and screen. */
import { type CodeKind, QUIET_MODULES } from '@/lib/labels/code-kind';
import { modulePath } from '@/lib/labels/code-modules';
import { codeSymbol } from './code-symbol';

interface Props {
  readonly kind: CodeKind;
  readonly text: string;
  /** Width with the quiet margin; a bar code is a third as high. */
  readonly sideMm: number;
}

export function CodeMark({ kind, text, sideMm }: Props) {
  const symbol = codeSymbol(kind, text);
  const quiet = QUIET_MODULES[kind];
  const across = symbol.across + 2 * quiet.across;
  const tall = kind === 'code-128' ? across / 3 : 1;
  const upright = symbol.upright * tall + 2 * quiet.upright;
  return (
    <svg
      width={`${sideMm}mm`}
      height={`${(sideMm * upright) / across}mm`}
      viewBox={`0 0 ${across} ${upright}`}
      role="img"
      shapeRendering="crispEdges"
    >
      <title>{`Code of ${text}`}</title>
      <rect width={across} height={upright} fill="#fff" />
      <path
        d={modulePath(symbol)}
        transform={`translate(${quiet.across} ${quiet.upright}) scale(1 ${tall})`}
        fill="#000"
      />
    </svg>
  );
}
