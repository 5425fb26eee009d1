import bwipjs from 'bwip-js/node';
import type { CodeKind } from '@/lib/labels/code-kind';
import { type CodeModules, modulesOfBars } from '@/lib/labels/code-modules';

/** How the drawing library names each, and with what care against dirt: a quarter of a QR may be lost. Data Matrix is ECC 200. */
const SYMBOL: Record<CodeKind, { readonly bcid: string; readonly options: object }> = {
  'data-matrix': { bcid: 'datamatrix', options: { format: 'square' } },
  qr: { bcid: 'qrcode', options: { eclevel: 'Q' } },
  'code-128': { bcid: 'code128', options: {} },
};

/** The squares or bars of a code that carries a short ID and nothing else: what a scanner types is the ID. */
export function codeSymbol(kind: CodeKind, text: string): CodeModules {
  const { bcid, options } = SYMBOL[kind];
  const [drawn] = bwipjs.raw({ bcid, text, ...options });
  if (drawn === undefined) throw new Error('The code could not be drawn.');
  if ('sbs' in drawn) return modulesOfBars(drawn.sbs);
  return { across: drawn.pixx, upright: drawn.pixy, dark: drawn.pixs };
}
