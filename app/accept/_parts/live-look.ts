import { type FormState, typedOr } from '@/app/_shared/form/form-state';
import type { ExposedThreads } from '@/lib/acceptance/applied-rule';
import { type EndFault, endFaults } from '@/lib/acceptance/end-faults';
import { missingGauges } from '@/lib/acceptance/required-gauges';
import type { AppliedRule, ConeContact, GaugeResult } from '@/lib/shop/acceptance';
import type { RejectCause, Role } from '@/lib/shop/vocabulary';
import type { AcceptFormProps } from './accept-form';

/** Which gauge of each kind lies on the bench. */
export type GaugeIds = Readonly<Partial<Record<Role, string>>>;

/** What is ticked and typed at this moment, as text. */
export interface Seen {
  readonly verdicts: Readonly<Partial<Record<Role, string>>>;
  /** Empty: NOT GO was not used. */
  readonly notGoTurns: string;
  readonly finish: string;
  readonly coneContact: string;
  readonly exposedThreads: string;
  readonly boreClear: boolean;
  readonly otherFault: string;
  readonly endCount: string;
}

export function gaugeIdsOf(gauges: AcceptFormProps['gauges'], state: FormState): GaugeIds {
  return Object.fromEntries(
    gauges.map(({ role, toolId }) => [role, typedOr(state, `gauge-${role}`, toolId)]),
  );
}

/** A new look, or a refused one as it was typed. */
export function seenOf({ gauges, again }: Pick<AcceptFormProps, 'gauges' | 'again'>, state: FormState): Seen {
  const typed = (name: string, otherwise = '') => typedOr(state, name, otherwise);
  return {
    verdicts: Object.fromEntries(gauges.map(({ role }) => [role, typed(`verdict-${role}`)])),
    notGoTurns: typed('notGoTurns'),
    finish: typed('finish'),
    coneContact: typed('coneContact', 'not-checked'),
    exposedThreads: typed('exposedThreads'),
    boreClear: typed('boreClear') !== '',
    otherFault: typed('otherFault'),
    endCount: typed('endCount', String(again?.endCount ?? 1)),
  };
}

/** What would come of it if it were recorded now. */
export type Preview =
  | { readonly kind: 'asked'; readonly sentence: string }
  | { readonly kind: 'refused'; readonly faults: readonly EndFault[] }
  | { readonly kind: 'no-rule' }
  | { readonly kind: 'held'; readonly missing: readonly Role[] }
  | { readonly kind: 'accepted' };

/** The look as it is being filled in, with what it is held against. */
export interface LookInHand {
  readonly seen: Seen;
  readonly gaugeIds: GaugeIds;
  readonly rule: AppliedRule | null;
  readonly exposed: ExposedThreads;
  readonly operations: readonly ('cone' | 'thread')[];
}

/** Decided with the same functions as the record; dates and states of the gauges are looked up when it is recorded. */
export function preview({ seen, gaugeIds, rule, exposed, operations }: LookInHand): Preview {
  const gauges = gaugesOf(seen, gaugeIds);
  const faults = endFaults(
    {
      operations: [...operations],
      gauges,
      finish: seen.finish === 'can-be-felt' ? 'can-be-felt' : 'smooth',
      coneContact: seen.coneContact as ConeContact,
      exposedThreads: seen.exposedThreads === '' ? null : Number(seen.exposedThreads),
      boreClear: seen.boreClear,
      otherFault: seen.otherFault === '' ? null : (seen.otherFault as RejectCause),
    },
    rule,
    exposed,
  );
  if (faults.length > 0) return { kind: 'refused', faults };
  if (seen.finish === '') return { kind: 'asked', sentence: 'Say what the gauges and the fingernail say.' };
  if (rule === null && gauges.some(({ role }) => role === 'not-go-ring')) return { kind: 'no-rule' };
  if (!seen.boreClear)
    return { kind: 'asked', sentence: 'Look through the bore, swab it, and tick that it is clear.' };
  const missing = missingGauges(operations, gauges);
  return missing.length > 0 ? { kind: 'held', missing } : { kind: 'accepted' };
}

function gaugesOf({ verdicts, notGoTurns }: Seen, gaugeIds: GaugeIds): GaugeResult[] {
  return (Object.entries(gaugeIds) as [Role, string][]).flatMap(([role, toolId]): GaugeResult[] => {
    if (toolId === '') return [];
    if (role === 'not-go-ring')
      return notGoTurns === '' ? [] : [{ toolId, role, verdict: 'pass', turns: Number(notGoTurns) }];
    const verdict = verdicts[role];
    return verdict === 'pass' || verdict === 'fail' ? [{ toolId, role, verdict, turns: null }] : [];
  });
}
