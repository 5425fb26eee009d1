import type { Db } from '@/db/open';

interface Raw {
  readonly id: string;
  readonly kind: string;
  readonly subject_id: string;
  readonly reverses_id: string | null;
  readonly payload: string;
}

interface NaiveTool {
  state: string;
  holderId: string | null;
  edgeNo: number;
  dueOnDay: string | null;
  openedOnDay: string | null;
  levelMl: number | null;
  /** "edge connection material dry rework" → [ends, good ends, exposure]. */
  readonly use: Record<string, [ends: number, goodEnds: number, exposureMicro: number]>;
}

/**
 * What every tool should stand at, counted straight from the raw rows of the ledger by someone who knows none of the
 * program's code: drop reversals and what they took back, then walk the rest once. It checks no rule.
 */
export function naiveTools(db: Db): Record<string, NaiveTool> {
  const rows = db.$client.prepare('SELECT * FROM entry ORDER BY seq').all() as Raw[];
  const gone = new Set(rows.map((row) => row.reverses_id));
  const tools: Record<string, NaiveTool> = {};
  for (const row of rows) {
    if (gone.has(row.id) || row.kind === 'entry-reversed') continue;
    const payload = JSON.parse(row.payload);
    if (row.kind === 'tool-received') tools[row.subject_id] = newTool(payload);
    const tool = tools[row.subject_id];
    if (tool !== undefined && row.kind !== 'tool-received') apply(tool, row.kind, payload);
  }
  return tools;
}

// biome-ignore lint/suspicious/noExplicitAny: raw JSON of the ledger, read on purpose without the program's types
function newTool(payload: any): NaiveTool {
  const { role, opening, dueOnDay, openedOnDay, levelMl } = payload;
  const edgeNo = role === 'die' || role === 'blade' ? 1 : 0;
  const tool = { state: 'in-crib', holderId: null, edgeNo, dueOnDay, openedOnDay, levelMl, use: {} };
  if (opening.known === 'counted')
    add(tool, { ...opening, goodEnds: opening.ends, dry: false, rework: false });
  return tool;
}

// biome-ignore lint/suspicious/noExplicitAny: raw JSON of the ledger, read on purpose without the program's types
function apply(tool: NaiveTool, kind: string, payload: any): void {
  if (kind === 'cut-logged') add(tool, payload);
  if (kind === 'tool-issued') Object.assign(tool, { state: 'issued', holderId: payload.toPersonId });
  if (kind === 'tool-returned') put(tool, payload.condition === 'ok' ? 'in-crib' : 'quarantined');
  if (kind === 'tool-moved' || kind === 'edge-ended') put(tool, payload.to);
  if (kind === 'first-off-checked' && payload.result === 'fail') put(tool, 'quarantined');
  if (kind === 'edge-renewed') {
    put(tool, 'in-crib');
    tool.edgeNo += 1;
  }
  if (kind.startsWith('gauge-')) gaugeApply(tool, kind, payload);
  if (kind === 'fluid-opened') tool.openedOnDay = payload.onDay;
  if (kind === 'fluid-level-read') tool.levelMl = payload.levelMl;
}

const calibratedOn = new WeakMap<NaiveTool, string>();
const knocked = new WeakMap<NaiveTool, string>();
const asideByCertificate = new WeakSet<NaiveTool>();

// biome-ignore lint/suspicious/noExplicitAny: raw JSON of the ledger, read on purpose without the program's types
function gaugeApply(tool: NaiveTool, kind: string, payload: any): void {
  const aside = knocked.has(tool) && tool.state === 'quarantined';
  if (kind === 'gauge-calibrated') {
    // A certificate older than the one in force is history.
    if (payload.onDay < (calibratedOn.get(tool) ?? '')) return;
    calibratedOn.set(tool, payload.onDay);
    tool.dueOnDay = payload.result === 'fail' ? null : payload.dueOnDay;
    if (aside && payload.onDay < (knocked.get(tool) ?? '')) return;
    if (payload.result === 'fail' || payload.asFound === 'out') {
      if (tool.state === 'quarantined' && !aside) return;
      put(tool, 'quarantined');
      asideByCertificate.add(tool);
    } else if (tool.state === 'calibration' || aside || asideByCertificate.has(tool)) put(tool, 'in-crib');
  }
  if (kind === 'gauge-checked' && payload.result === 'fail') put(tool, 'quarantined');
  if (kind === 'gauge-dropped') {
    put(tool, 'quarantined');
    knocked.set(tool, payload.onDay);
  }
  if (kind === 'gauge-interval-set' && payload.intervalDays !== null) {
    const from = Date.parse(calibratedOn.get(tool) ?? '');
    const sooner = from + payload.intervalDays * 86_400_000;
    if (tool.dueOnDay !== null && sooner < Date.parse(tool.dueOnDay))
      tool.dueOnDay = new Date(sooner).toISOString().slice(0, 10);
  }
}

function put(tool: NaiveTool, state: string): void {
  knocked.delete(tool);
  asideByCertificate.delete(tool);
  Object.assign(tool, { state, holderId: null });
}

// biome-ignore lint/suspicious/noExplicitAny: raw JSON of the ledger, read on purpose without the program's types
function add(tool: NaiveTool, row: any): void {
  const key = `${tool.edgeNo} ${row.connectionId} ${row.materialId} ${Number(row.dry)} ${Number(row.rework)}`;
  const [ends, good, micro] = tool.use[key] ?? [0, 0, 0];
  tool.use[key] = [ends + row.ends, good + row.goodEnds, micro + row.exposureMicro];
}

/** The same shape from the kept tables. */
export function keptTools(db: Db): Record<string, NaiveTool> {
  const client = db.$client;
  const tools = client
    .prepare(
      `SELECT id, state, holder_id AS holderId, due_on_day AS dueOnDay, opened_on_day AS openedOnDay,
         level_ml AS levelMl, (SELECT COALESCE(MAX(edge_no), 0) FROM edge WHERE tool_id = tool.id) AS edgeNo
       FROM tool`,
    )
    .all() as ({ id: string } & Omit<NaiveTool, 'use'>)[];
  return Object.fromEntries(tools.map(({ id, ...tool }) => [id, { ...tool, use: keptUse(db, id) }]));
}

function keptUse(db: Db, toolId: string): NaiveTool['use'] {
  const rows = db.$client.prepare('SELECT * FROM edge_use WHERE tool_id = ?').all(toolId) as Record<
    string,
    string | number
  >[];
  return Object.fromEntries(
    rows.map((row) => [
      `${row.edge_no} ${row.connection_id} ${row.material_id} ${row.dry} ${row.rework}`,
      [Number(row.ends), Number(row.good_ends), Number(row.exposure_micro)],
    ]),
  );
}
