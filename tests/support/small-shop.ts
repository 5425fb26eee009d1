import type { EnsembleInput, PartOnOffer, ToolInHand } from '@/lib/ensemble/build-ensemble';
import { fitLife, type LifeFitInput } from '@/lib/life/fit-life';
import type { LifeFit } from '@/lib/life/life-fit';
import type { EdgeHistory } from '@/lib/life/observation';
import { defaultLifePriors } from '@/lib/life/priors';
import { cut, edge } from './edge-histories';

export const DIE_PRIORS = defaultLifePriors('die', {
  referenceMaterialId: 'ref',
  materials: [{ materialId: '2507', factor: 2.5 }],
});

export function fitted(histories: readonly EdgeHistory[], more: Partial<LifeFitInput> = {}): LifeFit {
  const fit = fitLife({ kind: 'die', priors: DIE_PRIORS, histories, ...more });
  if (!fit.ok) throw new Error(fit.sentence);
  return fit;
}

/** Eight dies worn near 1200 turns, one dropped, two still cutting. */
export const HISTORIES: readonly EdgeHistory[] = [
  ...[1281, 1407, 1327, 884, 1208, 1638, 1113, 1549].map((turns, i) =>
    edge(`D-38-0${i + 1}`, { before: [cut(turns - 100)], during: [cut(150)], end: 'worn' }),
  ),
  edge('D-25-03', { partId: 'die-25', odIn: 0.25, before: [cut(356)], end: 'incident' }),
  edge('D-38-11', { before: [cut(430)] }),
  edge('D-38-12', { before: [cut(200), cut(50, { materialId: '2507' })] }),
];

export function inHand({ toolId, kind, partId, odIn, regrinds, before }: EdgeHistory): ToolInHand {
  return { toolId, kind, partId, odIn, regrinds, exposure: before };
}

export const TOOLS: readonly ToolInHand[] = HISTORIES.filter(({ end }) => end === 'in-service').map(inHand);
export const PARTS: readonly PartOnOffer[] = [
  { partId: 'die-38', kind: 'die', odIn: 0.375 },
  { partId: 'die-56', kind: 'die', odIn: 0.5625 },
];

export function smallShop(): EnsembleInput {
  return { kinds: { die: fitted(HISTORIES) }, tools: TOOLS, parts: PARTS };
}
