/** One closed job of the story: one line, so many ends accepted, so many made again, and which dies cut how many. */
export interface DemoJob {
  readonly id: string;
  readonly title: string;
  /** 18 is the first month of the story, 1 the last. */
  readonly monthsAgo: number;
  readonly connectionId: string;
  readonly materialId: string;
  readonly heat: string;
  readonly ends: number;
  /** Ends that were refused and made again: cut, but not accepted. */
  readonly remakes: number;
  readonly dies: readonly (readonly [dieId: string, ends: number])[];
}

type Line = readonly [
  monthsAgo: number,
  connectionId: string,
  materialId: string,
  ends: number,
  remakes: number,
  title: string,
  /** Each die with the ends it cut, as "D-38-02:5 D-38-03:3". */
  dies: string,
];

/**
 * The 85 jobs, found by integer programming so that accepted ends by month, size and material, and the ends of every
 * retired die, come out exactly as the story tells them. Turns × published material factor come out within 2.5 % of
 * the story's for every retired die, and within 4 turns for the live ones: whole ends of so few sizes and
 * materials allow no better.
 */
const LINES: readonly Line[] = [
  [18, '3-8-medium', '316-cw', 58, 4, 'Bench 1 jumper lines', 'D-38-01:62'],
  [18, '3-8-medium', '316-cw', 60, 5, 'Lander hydraulic spares', 'D-38-01:60 D-38-02:5'],
  [18, '3-8-medium', '2507', 8, 0, 'Trial spools in 2507', 'D-38-02:8'],
  [18, '9-16-medium', '316-cw', 8, 0, 'Pressure bench 2 manifold', 'D-56-01:8'],
  [18, '9-16-medium', '316-annealed', 40, 4, 'Test cell feed lines', 'D-56-01:44'],
  [18, '1-4-high', '316-cw', 50, 5, 'Winch brake lines', 'D-25-01:55'],
  [17, '3-8-medium', '316-cw', 28, 0, 'Sample valve spools', 'D-38-02:28'],
  [17, '3-8-medium', '316-annealed', 8, 0, 'Bench 2 vent lines', 'D-38-02:5 D-38-03:3'],
  [17, '3-8-medium', '316-cw', 40, 0, 'Lander thruster panel', 'D-38-03:40'],
  [17, '1-4-medium', '316-cw', 8, 0, 'Gauge board lines', 'D-25-01:5 D-25-02:3'],
  [17, '1-4-high', '316-annealed', 42, 4, 'Intensifier hook-up', 'D-25-01:36 D-25-02:10'],
  [17, '1-4-high', '316-cw', 34, 3, 'Camera housing test lines', 'D-25-02:37'],
  [16, '3-8-medium', '625', 16, 3, 'Sour-water loop in alloy 625', 'D-38-02:19'],
  [16, '9-16-high', 'ti-2', 80, 1, 'Lander ballast lines in titanium', 'D-56-01:33 D-56-02:48'],
  [16, '1-4-high', '316-cw', 36, 0, 'Bench 1 drain lines', 'D-25-02:33 D-25-03:3'],
  [15, '3-8-medium', '316-cw', 80, 0, 'Deck panel tubing', 'D-38-03:80'],
  [15, '3-8-medium', '316-annealed', 8, 1, 'Bench 1 jumper lines', 'D-38-03:5 D-38-04:4'],
  [15, '9-16-high', '316-annealed', 52, 2, 'Lander hydraulic spares', 'D-56-02:18 D-56-03:36'],
  [14, '3-8-medium', '316-cw', 84, 0, 'Pressure bench 2 manifold', 'D-38-04:81 D-38-05:3'],
  [14, '9-16-medium', '316-cw', 60, 0, 'Test cell feed lines', 'D-56-02:16 D-56-03:44'],
  [14, '1-4-medium', '316-cw', 72, 0, 'Winch brake lines', 'D-25-03:24 D-25-04:48'],
  [14, '1-4-medium', '316-annealed', 28, 0, 'Sample valve spools', 'D-25-03:10 D-25-04:18'],
  [13, '9-16-medium', '316-cw', 70, 7, 'Bench 2 vent lines', 'D-56-04:16 D-56-05:61'],
  [13, '1-4-medium', '316-cw', 46, 2, 'Lander thruster panel', 'D-25-04:48'],
  [13, '3-4-medium', '2507', 16, 2, 'Brine header in 2507', 'D-75-01:18'],
  [12, '3-8-medium', '316-cw', 58, 0, 'Gauge board lines', 'D-38-05:58'],
  [12, '9-16-high', '316-cw', 80, 0, 'Intensifier hook-up', 'D-56-03:18 D-56-04:62'],
  [12, '9-16-medium', '316-cw', 10, 1, 'Camera housing test lines', 'D-56-03:8 D-56-05:3'],
  [12, '9-16-medium', '316-annealed', 14, 2, 'Bench 1 drain lines', 'D-56-03:6 D-56-05:3 D-56-06:7'],
  [12, '9-16-high', '2507', 8, 1, 'Spare spools in 2507', 'D-56-04:5 D-56-05:4'],
  [12, '9-16-high', '316-annealed', 20, 0, 'Deck panel tubing', 'D-56-06:20'],
  [12, '1-4-high', '316-annealed', 10, 0, 'Bench 1 jumper lines', 'D-25-04:10'],
  [11, '3-8-medium', '316-annealed', 34, 2, 'Lander hydraulic spares', 'D-38-05:36'],
  [11, '3-8-medium', '625', 24, 0, 'Sour-water loop in alloy 625, second half', 'D-38-05:6 D-38-06:18'],
  [11, '3-8-medium', '2507', 8, 0, 'Spare spools in 2507', 'D-38-06:8'],
  [11, '9-16-high', '316-cw', 34, 0, 'Pressure bench 2 manifold', 'D-56-05:34'],
  [11, '9-16-medium', '316-cw', 44, 4, 'Test cell feed lines', 'D-56-06:16 D-56-07:32'],
  [10, '3-8-medium', '316-cw', 40, 3, 'Winch brake lines', 'D-38-06:43'],
  [10, '9-16-high', '316-cw', 88, 0, 'Sample valve spools', 'D-56-06:6 D-56-07:75 D-56-08:7'],
  [10, '1-4-high', '316-cw', 8, 0, 'Bench 2 vent lines', 'D-25-05:8'],
  [9, '3-8-medium', '316-annealed', 24, 3, 'Lander thruster panel', 'D-38-06:27'],
  [9, '9-16-medium', '316-cw', 74, 2, 'Gauge board lines', 'D-56-07:4 D-56-08:36 D-56-09:36'],
  [9, '1-4-medium', '316-cw', 74, 0, 'Intensifier hook-up', 'D-25-05:74'],
  [9, '1-4-medium', '316-annealed', 14, 1, 'Camera housing test lines', 'D-25-05:15'],
  [9, '3-4-medium', '316-cw', 62, 2, 'Bench 1 drain lines', 'D-75-01:64'],
  [8, '3-8-medium', '316-cw', 30, 3, 'Deck panel tubing', 'D-38-07:33'],
  [8, '1-4-high', '316-cw', 76, 0, 'Bench 1 jumper lines', 'D-25-05:76'],
  [8, '3-4-medium', '316-cw', 12, 0, 'Lander hydraulic spares', 'D-75-01:4 D-75-02:8'],
  [8, '1-medium', '316-cw', 8, 0, 'Pressure bench 2 manifold', 'D-100-01:8'],
  [7, '3-8-medium', '316-cw', 70, 7, 'Test cell feed lines', 'D-38-07:73 D-38-08:4'],
  [7, '9-16-medium', '316-cw', 110, 8, 'Winch brake lines', 'D-56-09:83 D-56-10:35'],
  [7, '9-16-medium', '316-annealed', 38, 4, 'Sample valve spools', 'D-56-10:42'],
  [7, '1-4-medium', '316-cw', 62, 0, 'Bench 2 vent lines', 'D-25-05:6 D-25-06:56'],
  [7, '1-4-high', '316-annealed', 8, 0, 'Lander thruster panel', 'D-25-05:3 D-25-06:5'],
  [6, '9-16-medium', '316-cw', 90, 0, 'Gauge board lines', 'D-56-10:6 D-56-11:41 D-56-12:43'],
  [6, '9-16-medium', '316-annealed', 10, 1, 'Intensifier hook-up', 'D-56-11:4 D-56-12:7'],
  [6, '9-16-high', '316-cw', 10, 0, 'Camera housing test lines', 'D-56-12:10'],
  [6, '1-4-high', '316-annealed', 26, 0, 'Bench 1 drain lines', 'D-25-06:26'],
  [6, '1-medium', '316-cw', 6, 2, 'Deck panel tubing', 'D-100-01:8'],
  [5, '3-8-medium', '316-cw', 82, 4, 'Bench 1 jumper lines', 'D-38-08:86'],
  [5, '9-16-medium', '316-cw', 12, 0, 'Lander hydraulic spares', 'D-56-10:8 D-56-13:4'],
  [5, '9-16-high', '316-cw', 86, 0, 'Pressure bench 2 manifold', 'D-56-11:52 D-56-13:34'],
  [5, '9-16-medium', '316-annealed', 8, 1, 'Test cell feed lines', 'D-56-12:9'],
  [5, '1-4-high', '316-cw', 72, 3, 'Winch brake lines', 'D-25-06:34 D-25-07:41'],
  [4, '3-8-medium', '2507', 48, 2, 'Brine manifold in 2507, large order', 'D-38-08:23 D-38-09:27'],
  [4, '3-8-medium', '316-annealed', 8, 0, 'Sample valve spools', 'D-38-09:8'],
  [4, '3-8-medium', '316-cw', 40, 0, 'Bench 2 vent lines', 'D-38-09:35 D-38-10:5'],
  [4, '9-16-medium', '316-cw', 22, 2, 'Lander thruster panel', 'D-56-13:24'],
  [4, '9-16-high', '316-annealed', 14, 0, 'Gauge board lines', 'D-56-13:14'],
  [4, '1-4-medium', '316-cw', 52, 4, 'Intensifier hook-up', 'D-25-07:56'],
  [3, '3-8-medium', '316-cw', 96, 3, 'Camera housing test lines', 'D-38-10:99'],
  [2, '3-8-medium', '316-cw', 8, 0, 'Bench 1 drain lines', 'D-38-10:8'],
  [2, '9-16-medium', '316-cw', 8, 0, 'Deck panel tubing', 'D-56-13:8'],
  [2, '9-16-medium', '316-annealed', 36, 4, 'Bench 1 jumper lines', 'D-56-13:40'],
  [2, '1-4-medium', '316-cw', 8, 0, 'Lander hydraulic spares', 'D-25-07:3 D-25-08:5'],
  [2, '1-4-medium', '2507', 64, 2, 'Brine probes in 2507', 'D-25-07:33 D-25-08:33'],
  [2, '1-4-high', '2507', 8, 0, 'Spare spools in 2507', 'D-25-07:5 D-25-08:3'],
  [1, '3-8-medium', '316-cw', 32, 2, 'Pressure bench 2 manifold', 'D-38-10:4 D-38-11:30'],
  [1, '3-8-medium', '316-annealed', 12, 2, 'Test cell feed lines', 'D-38-11:14'],
  [1, '9-16-medium', '316-cw', 10, 0, 'Winch brake lines', 'D-56-13:4 D-56-14:6'],
  [1, '9-16-high', '316-cw', 8, 0, 'Sample valve spools', 'D-56-13:5 D-56-14:3'],
  [1, '9-16-medium', '316-annealed', 8, 1, 'Bench 2 vent lines', 'D-56-14:9'],
  [1, '1-4-medium', '316-annealed', 8, 0, 'Lander thruster panel', 'D-25-08:8'],
  [1, '1-4-medium', 'ti-2', 40, 1, 'Sampling arm lines in titanium', 'D-25-08:18 D-25-09:23'],
  [1, '1-4-high', '316-annealed', 54, 2, 'Gauge board lines', 'D-25-08:40 D-25-09:16'],
];

const HEAT_PREFIX: Readonly<Record<string, string>> = {
  '316-cw': 'C',
  '316-annealed': 'L',
  '2507': 'S',
  '625': 'N',
  'ti-2': 'T',
};

/** Every closed job, oldest month first; within a month by tube size, in the order in which its dies were used. */
export const JOBS: readonly DemoJob[] = LINES.map(
  ([monthsAgo, connectionId, materialId, ends, remakes, title, dies], index) => ({
    id: `J-${String(index + 1).padStart(3, '0')}`,
    title,
    monthsAgo,
    connectionId,
    materialId,
    heat: `${HEAT_PREFIX[materialId] ?? 'X'}${4400 + 7 * Math.ceil(monthsAgo / 3)}`,
    ends,
    remakes,
    dies: dies.split(' ').map(readShare),
  }),
);

function readShare(text: string): readonly [dieId: string, ends: number] {
  const [dieId = '', ends = ''] = text.split(':');
  return [dieId, Number(ends)];
}
