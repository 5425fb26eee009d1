import type { EndCause } from '../../lib/shop/vocabulary';

/** How one die of the story lived. Turns are forward cutting turns × the material's published factor. */
export interface DieStory {
  readonly id: string;
  readonly partId: string;
  /** The month in which it was taken out of service; null: still in the crib. */
  readonly endsInMonth: number | null;
  readonly turns: number;
  /** Ends cut in its life; null for a live die, of which only the turns are told. */
  readonly ends: number | null;
  readonly cause: EndCause;
  readonly reason: string;
  readonly lot: string;
}

type Line = readonly [id: string, month: number | null, turns: number, ends: number | null];

/** Retirements and live dies of the invented shop, in the order of their sizes. */
const LINES: Readonly<Record<string, readonly Line[]>> = {
  'die-1-4': [
    ['D-25-01', 17, 1365, 96],
    ['D-25-02', 16, 1258, 83],
    ['D-25-03', 14, 356, 37],
    ['D-25-04', 12, 1218, 124],
    ['D-25-05', 7, 2242, 182],
    ['D-25-06', 5, 1460, 121],
    ['D-25-07', 2, 2203, 138],
    ['D-25-08', 1, 1790, 107],
    ['D-25-09', null, 534, null],
  ],
  'die-3-8': [
    ['D-38-01', 18, 1281, 122],
    ['D-38-02', 16, 1407, 65],
    ['D-38-03', 15, 1327, 128],
    ['D-38-04', 14, 884, 85],
    ['D-38-05', 11, 1208, 103],
    ['D-38-06', 9, 1638, 96],
    ['D-38-07', 7, 1113, 106],
    ['D-38-08', 4, 1549, 113],
    ['D-38-09', 4, 1144, 70],
    ['D-38-10', 1, 1218, 116],
    ['D-38-11', null, 430, null],
  ],
  'die-9-16': [
    ['D-56-01', 16, 1222, 85],
    ['D-56-02', 14, 1603, 82],
    ['D-56-03', 12, 1299, 112],
    ['D-56-04', 12, 1401, 83],
    ['D-56-05', 11, 1340, 105],
    ['D-56-06', 10, 563, 49],
    ['D-56-07', 9, 1590, 111],
    ['D-56-08', 9, 442, 43],
    ['D-56-09', 7, 1071, 119],
    ['D-56-10', 5, 740, 91],
    ['D-56-11', 5, 1269, 97],
    ['D-56-12', 5, 670, 69],
    ['D-56-13', 1, 1490, 133],
    ['D-56-14', null, 166, null],
  ],
  'die-3-4': [
    ['D-75-01', 8, 1130, 86],
    ['D-75-02', null, 80, null],
  ],
  'die-1': [['D-100-01', null, 175, null]],
};

/** Ends that were no wear, or say more than that GO would not run on. */
const ENDINGS: Readonly<Record<string, readonly [cause: EndCause, reason: string]>> = {
  'D-25-03': [
    'dropped',
    'Dropped at the bench, teeth lost. All fragments found, one in the bore with a light.',
  ],
  'D-56-01': ['worn', 'Galled on titanium with the usual oil at the end of its life; crests smeared.'],
  'D-56-06': ['bad-lot', 'Gone at less than half its life.'],
  'D-56-08': ['bad-lot', 'Second early one of lot 9F-31: the lot is held.'],
  'D-38-09': ['worn', 'Worn early: cut most of the 2507 job.'],
};

/** The lot of 9/16 dies that proved faulty. */
export const FAULTY_LOT = '9F-31';

export const DIES: readonly DieStory[] = Object.entries(LINES).flatMap(([partId, lines]) =>
  lines.map(([id, endsInMonth, turns, ends], index) => {
    const [cause, reason] = ENDINGS[id] ?? ['worn', 'GO will not run on.'];
    const lot = id === 'D-56-06' || id === 'D-56-08' ? FAULTY_LOT : `9F-${10 + Math.floor(index / 3)}`;
    return { id, partId, endsInMonth, turns, ends, cause, reason, lot };
  }),
);
