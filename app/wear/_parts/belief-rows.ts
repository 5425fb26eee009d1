import { factorText } from '@/app/_shared/format';
import type { Belief } from '@/lib/shop/belief';
import type { EdgeKind } from '@/lib/shop/vocabulary';

/** A figure that is believed before the log speaks, as the form asks for it. Field names are paths of the belief. */
export interface BeliefRow {
  readonly name: string;
  readonly words: string;
  readonly label: string;
  readonly value: string;
  readonly unit: string;
  /** Give or take a factor; undefined where the figure has none. */
  readonly giveOrTake?: string;
}

const PLURAL: Record<EdgeKind, string> = { die: 'dies', blade: 'blades' };

/** The rows of the form of one kind. Dies are not reground: their regrind figure is sent along unseen. */
export function beliefRows(belief: Belief): BeliefRow[] {
  const many = PLURAL[belief.kind];
  const row = (
    name: 'shape' | 'regrind' | 'dry' | 'rework',
    about: Omit<BeliefRow, 'name' | 'value' | 'giveOrTake'>,
  ): BeliefRow => ({
    name,
    ...about,
    value: factorText(belief[name].typical),
    giveOrTake: factorText(belief[name].giveOrTake),
  });
  const regrind = row('regrind', {
    words: 'A reground edge lasts so much of the life of the edge before',
    label: 'Life after a regrind',
    unit: 'of it',
  });
  return [
    row('shape', {
      words: `How evenly ${many} wear out: 1 breaks by chance at any age, 2 to 4 wears out, 6 and more all go at the same age`,
      label: 'Evenness',
      unit: '',
    }),
    ...(belief.kind === 'blade' ? [regrind] : []),
    row('dry', { words: 'Cutting dry wears so many times as fast', label: 'Cutting dry', unit: '×' }),
    row('rework', {
      words: 'Cutting a refused end again wears so many times as fast',
      label: 'Recutting',
      unit: '×',
    }),
    {
      name: 'partGiveOrTake',
      words: `How far ${many} of different parts lie apart in typical life, beyond what size explains`,
      label: 'Between parts',
      value: factorText(belief.partGiveOrTake),
      unit: '×',
    },
    {
      name: 'livesPerIncident',
      words: `Of so many ${many}, one is lost to an accident: dropped, cross-threaded, chipped when new`,
      label: 'One accident in',
      value: factorText(belief.livesPerIncident),
      unit: 'lives',
    },
    {
      name: 'longTailPercent',
      words: `How likely it is that a few ${many} last far longer than the rest, so that the longest lives stretch out; the log then decides`,
      label: 'A few last far longer',
      value: factorText(belief.longTailPercent ?? 0),
      unit: '%',
    },
  ];
}
