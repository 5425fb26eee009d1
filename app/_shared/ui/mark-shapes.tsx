/**
 * The house's own shapes, on a 20 × 20 field, told apart without colour.
 * Tool states grow from one idea: a round tool and its slot in the crib board.
 *   in the crib     the tool sits in its slot          issued        the slot is empty, the tool is above it
 *   regrind         the tool under a grinding wheel    calibration   a graduated scale with a pointer
 *   quarantined     a hatched square: fenced off       scrapped      struck through
 *   lost            only the outline is left
 *   coming          an arrow into the empty slot
 * Verdicts are solid figures: a closed ring, a half-filled lozenge, a barred square. Die verdicts are directions:
 * one arrow on, an arrow with a second behind it, two arrows that change places.
 */
import type { ReactNode } from 'react';
import type { Verdict } from '@/lib/capability/line-verdict';
import type { ToolState } from '@/lib/shop/vocabulary';

export type MarkShape = ToolState | Verdict | 'coming' | 'go' | 'go-with-standby' | 'swap';

const pen = { fill: 'none', stroke: 'currentColor', strokeWidth: 1.75, strokeLinejoin: 'round' } as const;
const fine = { ...pen, strokeWidth: 1.25 } as const;
const solid = { fill: 'currentColor' } as const;
const SLOT = 'M2.5 10v7.5h15V10';

export const MARK_SHAPE: Record<MarkShape, ReactNode> = {
  'in-crib': (
    <>
      <path {...pen} d={SLOT} />
      <circle {...solid} cx="10" cy="10.2" r="5" />
    </>
  ),
  issued: (
    <>
      <path {...pen} d="M2.5 12.5v5h15v-5" />
      <circle {...pen} cx="10" cy="6.2" r="4" />
    </>
  ),
  regrind: (
    <>
      <circle {...pen} cx="7.6" cy="7.6" r="5.2" />
      <circle {...solid} cx="7.6" cy="7.6" r="1.3" />
      <path {...solid} d="M18 10.2v7.8h-7.8Z" />
    </>
  ),
  calibration: (
    <>
      <path {...pen} d="M2 16.5h16M3 16.5v-6M17 16.5v-6M10 16.5v-6" />
      <path {...fine} d="M6.5 16.5v-3.6M13.5 16.5v-3.6" />
      <path {...solid} d="M8.8 2.5h6l-3 5.5Z" />
    </>
  ),
  quarantined: (
    <>
      <path {...pen} d="M3 3h14v14H3Z" />
      <path {...fine} d="M3 9l6-6M3 17L17 3M11 17l6-6" />
    </>
  ),
  scrapped: (
    <>
      <circle {...pen} cx="10" cy="10" r="5.6" />
      <path {...pen} d="M2.5 17.5l15-15" />
    </>
  ),
  lost: <circle {...pen} cx="10" cy="10" r="7" strokeDasharray="3.2 4.13" />,
  coming: (
    <>
      <path {...pen} d={SLOT} />
      <path {...pen} d="M10 1.5v7" />
      <path {...solid} d="M5.8 7.8h8.4L10 13.6Z" />
    </>
  ),
  'can-make': (
    <>
      <circle {...pen} cx="10" cy="10" r="7.4" />
      <circle {...solid} cx="10" cy="10" r="4.2" />
    </>
  ),
  'at-risk': (
    <>
      <path {...pen} d="M10 1.8L18.2 10 10 18.2 1.8 10Z" />
      <path {...solid} d="M1.8 10h16.4L10 18.2Z" />
    </>
  ),
  'cannot-make-now': (
    <>
      <path {...solid} d="M2 2h16v16H2Z" />
      <path d="M5 8.2h10v3.6H5Z" fill="var(--mark-paper)" />
    </>
  ),
  go: <path {...solid} d="M3 2.5L17.5 10 3 17.5Z" />,
  'go-with-standby': (
    <>
      <path {...solid} d="M7 3.5L18.5 10 7 16.5Z" />
      <path {...pen} d="M4.6 4.4L1.6 2.8v14.4l3-1.6" />
    </>
  ),
  swap: (
    <>
      <path {...pen} d="M2 6.5h11M18 13.5H7" />
      <path {...solid} d="M12 2l6 4.5-6 4.5ZM8 9l-6 4.5L8 18Z" />
    </>
  ),
};
