import { addDays, type Day } from '../lib/calendar/day';
import type { ImportKind } from '../lib/import/column';
import { COLUMNS } from '../lib/import/columns';
import { csvText } from '../lib/import/csv-text';
import { EXAMPLE_TOOLS, type ExampleTool } from './example-tools';
import { chanceOf } from './random';

/** The days of the files that ship: a log that is past, and jobs that are still to come. */
export const EXAMPLE_DAYS = { lastCutDay: '2025-12-15', firstJobDay: '2027-06-07' };

type Cells = Readonly<Record<string, string>>;

/** One tube size and service of the example: its dies and blades with the ends that each edge cut. */
interface Stream {
  readonly size: string;
  readonly service: 'medium' | 'high';
  /** Each die with its ends, and why it ended; no cause: still in the crib. */
  readonly dies: readonly (readonly [toolId: string, ends: number, cause?: string])[];
  /** Each edge of each blade with its cones and how it ended. */
  readonly edges: readonly (readonly [toolId: string, cones: number, ending?: string])[];
}

const STREAMS: readonly Stream[] = [
  {
    size: '3/8 in',
    service: 'medium',
    dies: [
      ['D-38-01', 118, 'worn'],
      ['D-38-02', 96, 'worn'],
      ['D-38-03', 131, 'worn'],
      ['D-38-04', 34],
    ],
    edges: [
      ['B-38-01', 62, 'worn, reground'],
      ['B-38-02', 55, 'worn, reground'],
      ['B-38-01', 51, 'worn, reground'],
      ['B-38-02', 48, 'worn, reground'],
      ['B-38-01', 57],
      ['B-38-02', 60, 'worn'],
      ['B-38-03', 46],
    ],
  },
  {
    size: '9/16 in',
    service: 'medium',
    dies: [
      ['D-56-01', 96, 'worn'],
      ['D-56-02', 38, 'dropped'],
    ],
    edges: [
      ['B-56-01', 49, 'worn, reground'],
      ['B-56-02', 53, 'worn, reground'],
      ['B-56-01', 32],
    ],
  },
  {
    size: '9/16 in',
    service: 'high',
    dies: [['D-56-03', 66, 'worn']],
    edges: [
      ['B-56H-01', 41, 'worn, reground'],
      ['B-56H-02', 25],
    ],
  },
];

const ROW_ENDS = 8;
const HISTORY_DAYS = 230;

/** The open jobs: the high pressure one has no die to be cut with. Days from the first job's start. */
const JOBS: readonly (readonly [
  job: string,
  title: string,
  size: string,
  service: string,
  material: string,
  ends: number,
  start: number,
  due: number,
])[] = [
  ['E-101', 'Test bench manifold', '3/8 in', 'medium', '316-cw', 12, 0, 4],
  ['E-102', 'Pressure vessel feed line', '9/16 in', 'high', '316-cw', 10, 3, 10],
  ['E-103', 'Gauge board spares', '3/8 in', 'medium', '316-annealed', 16, 7, 11],
  ['E-104', 'Sample valve spools', '3/8 in', 'medium', '316-cw', 8, 14, 17],
  ['E-105', 'Bench vent lines', '3/8 in', 'medium', '316-cw', 20, 21, 27],
];

/**
 * The example files for a first import: a small invented shop of 3/8 and 9/16 tube, whose last 9/16 die is worn out, so
 * that one of its five jobs cannot be made until a die is received. `lastCutDay`: the log ends before it. `firstJobDay`:
 * the first job starts on it. Same days, same files.
 */
export function exampleFiles(days: { lastCutDay: Day; firstJobDay: Day }): Record<ImportKind, string> {
  const { lastCutDay, firstJobDay } = days;
  const cuts = STREAMS.flatMap((stream) => streamCuts(stream, lastCutDay));
  cuts.sort((a, b) =>
    (a.cut_on ?? '') < (b.cut_on ?? '') ? -1 : (a.cut_on ?? '') > (b.cut_on ?? '') ? 1 : 0,
  );
  return {
    tools: fileOf(
      'tools',
      EXAMPLE_TOOLS.map((tool) => toolCells(tool, days)),
    ),
    cuts: fileOf('cuts', cuts),
    jobs: fileOf(
      'jobs',
      JOBS.map((job) => jobCells(job, firstJobDay)),
    ),
  };
}

function fileOf(kind: ImportKind, rows: readonly Cells[]): string {
  const keys = COLUMNS[kind]
    .map(({ key }) => key)
    .filter((key) => rows.some((row) => (row[key] ?? '') !== ''));
  return csvText(
    keys,
    rows.map((row) => keys.map((key) => row[key] ?? '')),
  );
}

function toolCells(
  tool: ExampleTool,
  { lastCutDay, firstJobDay }: { lastCutDay: Day; firstJobDay: Day },
): Cells {
  const { calibrated = false, fluidMl, ...cells } = tool;
  return {
    ...cells,
    received_on: addDays(lastCutDay, -HISTORY_DAYS - 20),
    ...(calibrated && { calibration_due: addDays(firstJobDay, 400) }),
    ...(fluidMl !== undefined && { level_ml: String(fluidMl), shelf_life: addDays(firstJobDay, 700) }),
  };
}

function jobCells(
  [job, title, size, service, material, ends, start, due]: (typeof JOBS)[number],
  firstJobDay: Day,
): Cells {
  const when = { start_on: addDays(firstJobDay, start), due_on: addDays(firstJobDay, due) };
  return {
    job,
    title,
    line: '1',
    size,
    service,
    material,
    ends: String(ends),
    cone: 'yes',
    thread: 'yes',
    ...when,
  };
}

/** The rows of one stream: cones and threads of the same ends, a row a day, from the first day of the log to the last. */
function streamCuts({ size, service, dies, edges }: Stream, lastCutDay: Day): Cells[] {
  const chance = chanceOf(`example ${size} ${service}`);
  const total = dies.reduce((sum, [, ends]) => sum + ends, 0);
  const dayAt = (done: number) =>
    addDays(lastCutDay, -HISTORY_DAYS + Math.floor((done / total) * (HISTORY_DAYS - 5)));
  const rowsOf = (uses: Stream['edges'], spoils: boolean) => {
    let done = 0;
    return uses.flatMap(([tool_id, all, ending]) =>
      split(all).map((ends, at, parts) => {
        const bad = spoils && chance.int(1, 6) === 1 ? 1 : 0;
        const material = chance.int(1, 5) === 1 ? '316-annealed' : '316-cw';
        done += ends;
        const row = {
          tool_id,
          cut_on: dayAt(done),
          size,
          service,
          material,
          ends: String(ends),
          good_ends: String(ends - bad),
        };
        const last = at === parts.length - 1 ? (ending ?? '') : '';
        return { ...row, rejects: bad === 0 ? '' : 'torn-thread: 1', edge_ended: last };
      }),
    );
  };
  return [...rowsOf(edges, false), ...rowsOf(dies, true)];
}

function split(ends: number): number[] {
  const count = Math.ceil(ends / ROW_ENDS);
  return Array.from(
    { length: count },
    (_, at) => Math.floor((ends * (at + 1)) / count) - Math.floor((ends * at) / count),
  );
}
