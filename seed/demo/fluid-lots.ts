import type { FluidLot } from '../../lib/shop/fluid-lot';
import { type Calendar, monthDay } from './calendar';
import { CHLORINE_FREE_FLUID, OXYGEN_FLUID } from './set-up';

const USUAL = {
  partId: 'fluid',
  shelfLife: 'fixed',
  chlorinated: 'yes',
  supplierAnswer: 'Marrowfen Fluids, by letter: medium-chain chlorinated paraffins, over 0.1 %',
  productIdentifier: 'Usual threading oil (neat, chlorinated)',
  sdsKeptAt: 'crib, red binder, tab 4',
  signal: 'warning',
  pictograms: ['GHS07', 'GHS09'],
  hazards: ['Causes skin irritation', 'May cause harm to breast-fed children', 'Very toxic to aquatic life'],
  usedAt: 'benches B1 to B3',
  storage: 'indoors, closed, away from light, 5 to 30 °C',
  firstAid:
    'Skin: wash with soap and water. Eyes: rinse for some minutes. Swallowed: do not make sick; ask a doctor.',
  disposal: 'controlled waste: waste carrier, transfer note kept',
  reviewOnDay: null,
} as const satisfies Partial<FluidLot>;

const PLAIN = {
  ...USUAL,
  ...{ partId: CHLORINE_FREE_FLUID, shelfLife: 'extendable', chlorinated: 'no' },
  supplierAnswer: 'Marrowfen Fluids, by letter: none added',
  productIdentifier: 'Chlorine-free threading oil (neat)',
  sdsKeptAt: 'crib, red binder, tab 6',
  ...{ pictograms: ['GHS07'], hazards: ['May cause an allergic skin reaction'] },
  usedAt: 'titanium work',
} as const satisfies Partial<FluidLot>;

/** What was written down of each lot when it came, days from today. Of L07 nobody has asked the supplier yet. */
export function demoLots(calendar: Calendar): { offset: number; facts: FluidLot }[] {
  const of = (
    facts: Omit<FluidLot, 'sdsOnDay' | 'pictograms' | 'hazards'> & Lists,
    offset: number,
    sds: number,
  ) => ({
    offset,
    facts: {
      ...facts,
      pictograms: [...facts.pictograms],
      hazards: [...facts.hazards],
      sdsOnDay: calendar.day(sds),
    },
  });
  return [
    of({ ...USUAL, lot: 'L04', sdsRevision: '3.1' }, monthDay(12, 6), monthDay(20, 0)),
    of({ ...USUAL, lot: 'L05', sdsRevision: '3.1' }, monthDay(9, 5), monthDay(20, 0)),
    of({ ...PLAIN, lot: 'L02', sdsRevision: '1.0' }, monthDay(16, 4), monthDay(30, 0)),
    of({ ...PLAIN, lot: 'L06', sdsRevision: '1.2' }, monthDay(15, 8), monthDay(17, 0)),
    of(
      {
        ...{ ...USUAL, lot: 'L07', sdsRevision: '4.0', chlorinated: 'unknown' },
        supplierAnswer: 'Formula changed says the SDS; asked, no answer yet',
      },
      monthDay(2, 10),
      monthDay(3, 0),
    ),
    of(
      {
        ...{
          ...PLAIN,
          partId: OXYGEN_FLUID,
          lot: 'L08',
          sdsRevision: '2.0',
          shelfLife: 'fixed',
          signal: 'none',
        },
        ...{ productIdentifier: 'Water-based fluid for oxygen service', pictograms: [], hazards: [] },
        ...{
          usedAt: 'oxygen-service lines, bench B3 after cleaning',
          storage: 'closed, 5 to 30 °C, keep from frost',
        },
      },
      monthDay(7, 12),
      monthDay(9, 0),
    ),
  ];
}

interface Lists {
  readonly pictograms: readonly FluidLot['pictograms'][number][];
  readonly hazards: readonly string[];
}
