import { lookOutcome } from '../acceptance/look-outcome';
import type { Role } from '../shop/vocabulary';
import type { EndTrace, TracedLook } from './end-trace';
import type { TracedCut } from './traced-cut';

/** Something that the record does not say about an end. */
export type TraceGap =
  | { readonly kind: 'heat' | 'place' | 'gauges' | 'rule' | 'cone-contact' | 'exposed-threads' | 'fluid' }
  | { readonly kind: 'gauge-missing'; readonly role: Role }
  | { readonly kind: 'edge'; readonly role: 'die' | 'blade' }
  | { readonly kind: 'edge-use'; readonly toolId: string }
  | { readonly kind: 'certificate' | 'certificate-file'; readonly toolId: string }
  | { readonly kind: 'cut'; readonly operation: 'cone' | 'thread' }
  | { readonly kind: 'cut-differs'; readonly toolId: string; readonly loggedId: string }
  | { readonly kind: 'which-refused'; readonly ends: number };

/**
 * What is not known of an end, in the order of what an auditor asks for: gauges and their certificates first, then where the
 * end stands, heat, tools, who cut it, what was not looked at. Read from the look that accepted it; empty where the record
 * says everything. `cuts` are the rows of the log that the end falls in by count.
 */
export function traceGaps(trace: EndTrace, cuts: readonly TracedCut[]): TraceGap[] {
  const [look] = trace.looks;
  if (look === undefined) return [];
  const refused = trace.refusedBefore.reduce((sum, { endCount }) => sum + endCount, 0);
  return [
    ...gaugeGaps(look),
    ...missingGauges(trace.looks),
    ...when(look.rule === null, { kind: 'rule' }),
    ...when(trace.endNo === null && trace.mark === null, { kind: 'place' }),
    ...when(trace.heat === '', { kind: 'heat' }),
    ...edgeGaps(look, trace.operations),
    ...when(look.fluid === null, { kind: 'fluid' }),
    ...cutGaps(look, cuts, trace.operations),
    ...when(trace.operations.includes('cone') && look.coneContact === 'not-checked', {
      kind: 'cone-contact',
    }),
    ...when(trace.operations.includes('thread') && look.exposedThreads === null, { kind: 'exposed-threads' }),
    ...when(refused > 0, { kind: 'which-refused', ends: refused }),
  ];
}

function gaugeGaps({ gauges }: TracedLook): TraceGap[] {
  const used = gauges.filter(({ verdict }) => verdict !== 'not-used');
  if (used.length === 0) return [{ kind: 'gauges' }];
  return used.flatMap(({ toolId, certificate }): TraceGap[] => {
    if (certificate === null) return [{ kind: 'certificate', toolId }];
    return certificate.file ? [] : [{ kind: 'certificate-file', toolId }];
  });
}

/** Gauges that neither the look that accepted it nor a later one that passed it recorded. */
function missingGauges([first, ...again]: readonly TracedLook[]): TraceGap[] {
  if (first === undefined || first.gauges.every(({ verdict }) => verdict === 'not-used')) return [];
  if (again.some((look) => lookOutcome(look) === 'passed')) return [];
  return first.gaugesMissing.map((role) => ({ kind: 'gauge-missing', role }));
}

function edgeGaps({ die, blade }: TracedLook, operations: EndTrace['operations']): TraceGap[] {
  const asked = [
    ...(operations.includes('cone') ? [{ role: 'blade', edge: blade } as const] : []),
    ...(operations.includes('thread') ? [{ role: 'die', edge: die } as const] : []),
  ];
  return asked.flatMap(({ role, edge }): TraceGap[] => {
    if (edge === null) return [{ kind: 'edge', role }];
    return edge.usedThen === null ? [{ kind: 'edge-use', toolId: edge.toolId }] : [];
  });
}

function cutGaps(
  look: TracedLook,
  cuts: readonly TracedCut[],
  operations: EndTrace['operations'],
): TraceGap[] {
  return operations.flatMap((operation): TraceGap[] => {
    const cut = cuts.find((one) => one.operation === operation);
    if (cut === undefined) return [{ kind: 'cut', operation }];
    const recorded = (operation === 'cone' ? look.blade : look.die)?.toolId;
    return recorded === undefined || recorded === cut.toolId
      ? []
      : [{ kind: 'cut-differs', toolId: recorded, loggedId: cut.toolId }];
  });
}

function when(missing: boolean, gap: TraceGap): TraceGap[] {
  return missing ? [gap] : [];
}
