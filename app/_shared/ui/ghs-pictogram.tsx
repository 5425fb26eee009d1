/**
 * <GhsPictogram code="GHS07" size={40} />: the hazard pictograms of the GHS, drawn by us from the general descriptions of Annex 3:
 * black symbol on white in a red square frame set on its point. On a label the size is given in mm by the label's own style.
 */
import type { ReactNode } from 'react';
import { GHS_PICTOGRAMS, type GhsCode } from '@/lib/shop/ghs';

const FLAME =
  'M50 22c2 9 15 16 15 31 0 11-6 18-15 18s-15-7-15-18c0-7 4-12 7-16 0 5 2 8 5 8 5 0 1-13 3-23Zm-1 31c-4 4-6 6-6 10 0 3 3 5 7 5s7-2 7-5c0-4-5-5-8-10Z';
const OPEN_FLAME =
  'M50 18c2 7 12 13 12 24 0 3-1 6-2 8-3-4-6-6-10-6s-7 2-10 6c-1-2-2-5-2-8 0-6 3-10 6-13 0 4 2 6 4 6 4 0 0-10 2-17Z';

const SYMBOL: Record<GhsCode, ReactNode> = {
  GHS01: (
    <path d="M38 58a12 12 0 1 1 24 0 12 12 0 1 1-24 0Zm10-16-4-14 8 9 5-14 1 14 11-6-6 10 12 1-12 4 10 8-13-3-2-6ZM30 40l6 5-8 1Z" />
  ),
  GHS02: <path fillRule="evenodd" d={`${FLAME}M34 74h32v4H34Z`} />,
  GHS03: (
    <path
      fillRule="evenodd"
      d={`${OPEN_FLAME}M50 46a14 14 0 1 1 0 28 14 14 0 0 1 0-28Zm0 6a8 8 0 1 0 0 16 8 8 0 0 0 0-16ZM34 76h32v4H34Z`}
    />
  ),
  GHS04: <path d="M29 62 58 33c3-3 7-3 10 0s3 7 0 10L39 72c-3 3-7 3-10 0s-3-7 0-10Zm39-36 6 6-4 4-6-6Z" />,
  GHS05: (
    <>
      <path d="M27 32l16-5 2 5-16 5Zm16 4 4 10h-3l-4-9ZM25 56h24v5H25Zm6 7h4c0 5 2 4 3 8h-8c1-4 1-3 1-8Z" />
      <path d="M73 32l-16-5-2 5 16 5ZM57 36l-4 10h3l4-9ZM51 52c6-5 12-2 20 2l5 3c2 2 0 4-3 3l-9-3 8 6c2 2 0 4-3 3l-9-5c-4 2-8 0-9-3Z" />
    </>
  ),
  GHS06: (
    <path
      fillRule="evenodd"
      d="M50 22c11 0 17 7 17 16 0 6-3 9-6 11v7H39v-7c-3-2-6-5-6-11 0-9 6-16 17-16Zm-7 13a5 5 0 1 0 0 10 5 5 0 0 0 0-10Zm14 0a5 5 0 1 0 0 10 5 5 0 0 0 0-10Zm-7 11-3 5h6ZM30 58l20 8 20-8 2 5-14 6 14 6-2 5-20-8-20 8-2-5 14-6-14-6Z"
    />
  ),
  GHS07: <path d="M44 24h12l-3 32h-6Zm6 38a6 6 0 1 1 0 12 6 6 0 0 1 0-12Z" />,
  GHS08: (
    <path
      fillRule="evenodd"
      d="M50 20a8 8 0 1 1 0 16 8 8 0 0 1 0-16ZM37 39h26c5 0 7 3 7 7v28h-8V52h-2v24H40V52h-2v22h-8V46c0-4 2-7 7-7Zm13 4-3 7-7-3 3 7-7 3 7 3-3 7 7-3 3 7 3-7 7 3-3-7 7-3-7-3 3-7-7 3Z"
    />
  ),
  GHS09: (
    <path
      fillRule="evenodd"
      d="M33 28h3v14l7-7 2 2-9 9v6l10-4v3l-10 5v14h-5V54l-7-6 2-2 5 4V42l-5-6 2-2 3 4Zm-9 46h52v3H24Zm22-14c8-9 18-10 24-2l6-5v15l-6-4c-7 6-17 5-24-4Zm18-3a2 2 0 1 0 .01 0Z"
    />
  ),
};

export function GhsPictogram({ code, size }: { readonly code: GhsCode; readonly size?: number }) {
  const name = GHS_PICTOGRAMS.find((known) => known.code === code)?.name ?? code;
  return (
    <svg viewBox="0 0 100 100" width={size} height={size} role="img" style={{ flex: 'none' }}>
      <title>{name}</title>
      <path
        d="M50 5 95 50 50 95 5 50Z"
        fill="#fff"
        stroke="var(--safety-red)"
        strokeWidth="6"
        strokeLinejoin="miter"
      />
      <g fill="var(--safety-black)" transform="translate(8 8) scale(.84)">
        {SYMBOL[code]}
      </g>
    </svg>
  );
}
