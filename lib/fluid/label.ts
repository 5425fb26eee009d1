import type { Day } from '../calendar/day';
import type { Chlorinated, FluidLot } from '../shop/fluid-lot';
import type { GhsCode, GhsSignal } from '../shop/ghs';

/** What a label is made from: the bottle, its product, and what is written down of its lot. */
export interface LabelFacts {
  readonly toolId: string;
  readonly productName: string;
  readonly lot: string;
  readonly openedOnDay: Day | null;
  readonly useByDay: Day | null;
  readonly chlorinated: Chlorinated;
  readonly lotFacts: FluidLot | undefined;
}

/** The words of a secondary-container label. Nothing stands on it that nobody has written down. */
export interface FluidLabel {
  readonly identifier: string;
  readonly toolId: string;
  readonly lot: string;
  readonly openedOnDay: Day | null;
  readonly useByDay: Day | null;
  readonly signal: GhsSignal | null;
  readonly pictograms: readonly GhsCode[];
  readonly hazards: readonly string[];
  /** What to say instead where no hazards are written down; null where they are. */
  readonly unknown: string | null;
  readonly chlorinated: string;
  readonly sds: string;
}

/** Said on the label where nobody has written the hazards down. */
export const HAZARDS_UNKNOWN = 'hazards: not written down — read the SDS';

const CHLORINATED_WORDS: Record<Chlorinated, string> = {
  yes: 'chlorinated paraffins: YES — not on titanium',
  no: 'chlorinated paraffins: no, says the supplier',
  unknown: 'chlorinated paraffins: unknown — not on titanium',
};

/**
 * The label of a bottle or its dropper: product identifier, lot, opened on, use by, and the hazards in words and pictograms as
 * they stand in the lot's record; where none do, the label says so. Source: GHS; 29 CFR 1910.1200(f) on workplace containers.
 */
export function fluidLabel(facts: LabelFacts): FluidLabel {
  const { toolId, productName, lot, openedOnDay, useByDay, chlorinated, lotFacts } = facts;
  const { signal = null, pictograms = [], hazards = [] } = lotFacts ?? {};
  const isWritten = signal !== null || pictograms.length > 0 || hazards.length > 0;
  return {
    identifier: lotFacts?.productIdentifier || productName,
    ...{ toolId, lot, openedOnDay, useByDay, signal, pictograms, hazards },
    unknown: isWritten ? null : HAZARDS_UNKNOWN,
    chlorinated: CHLORINATED_WORDS[chlorinated],
    sds: sdsWords(lotFacts),
  };
}

/** Which safety data sheet, and where it is kept. */
export function sdsWords(lot: FluidLot | undefined): string {
  if (lot === undefined || lot.sdsRevision === '') return 'SDS: revision not written down';
  const dated = lot.sdsOnDay === null ? '' : ` of ${lot.sdsOnDay}`;
  const at = lot.sdsKeptAt === '' ? ', where it is kept is not written down' : ` at ${lot.sdsKeptAt}`;
  return `SDS rev ${lot.sdsRevision}${dated}${at}`;
}
