import { readEdge } from '../../db/commands/read-edge';
import { externalThreadLimits } from '../../lib/thread/limits';
import { bestWireMm, overWiresMm } from '../../lib/thread/three-wire';
import { inToMm } from '../../lib/units/inch-mm';
import { type Act, act } from './act';
import type { Calendar } from './calendar';
import type { CutRow } from './cutting';
import { actorOf } from './people';

/** A die whose last thread is measured over wires as it wears, and how many ends it takes from new to its upper limit. */
const MEASURED = [
  { dieId: 'D-38-10', sizeIn: { num: 3, den: 8 }, tpi: 24, endsToLimit: 116, everyNth: 2 },
  { dieId: 'D-25-09', sizeIn: { num: 1, den: 4 }, tpi: 28, endsToLimit: 125, everyNth: 1 },
] as const;

/** Where between the limits a new die cuts, from the lower one. */
const NEW_CUTS_AT = 0.3;
/** How far a reading strays, as a share of the tolerance: read by people, with wires. */
const STRAYS = [0.02, -0.03, 0.01, -0.01, 0.03, -0.02] as const;
const MINUTES_AFTER = 25;
const STEP_MM = 0.001;

/** Two dies of the story had their last thread measured over three wires, one from new until GO refused. */
export function threadReadingActs(calendar: Calendar, rows: readonly CutRow[]): Act[] {
  return MEASURED.flatMap((die) => dieReadings(die, calendar, rows));
}

function dieReadings(die: (typeof MEASURED)[number], calendar: Calendar, rows: readonly CutRow[]): Act[] {
  const own = rows.filter(({ dieId }) => dieId === die.dieId).sort((a, b) => a.threadAtMs - b.threadAtMs);
  let ends = 0;
  const after = own.map((row) => {
    ends += row.ends;
    return { row, ends };
  });
  return after
    .filter((_, at) => at % die.everyNth === 0 || at === after.length - 1)
    .map(({ row, ends: cut }, at) => reading(die, { row, at, worn: cut / die.endsToLimit }, calendar));
}

function reading(
  die: (typeof MEASURED)[number],
  { row, at, worn }: { readonly row: CutRow; readonly at: number; readonly worn: number },
  calendar: Calendar,
): Act {
  const { dieId, tpi } = die;
  const limits = externalThreadLimits(die, '2A');
  const [minMm, maxMm] = [inToMm(limits.pitchMinIn), inToMm(limits.pitchMaxIn)];
  const share = NEW_CUTS_AT + (1 - NEW_CUTS_AT) * worn + (STRAYS[at % STRAYS.length] ?? 0);
  const wireMm = bestWireMm(tpi);
  const exactMm = overWiresMm({ pitchDiameterMm: minMm + share * (maxMm - minMm), tpi, wireMm });
  // A micrometer reads whole thousandths of a millimetre.
  const readMm = Math.round(exactMm / STEP_MM) * STEP_MM;
  const pitchDiameterMm = readMm - overWiresMm({ pitchDiameterMm: minMm, tpi, wireMm }) + minMm;
  const finding = {
    method: 'pitch-diameter' as const,
    ...{ pitchDiameterMm, minMm, maxMm },
    instrument: 'wires' as const,
    overWires: { overWiresMm: readMm, wireMm },
  };
  const when = {
    atMs: row.threadAtMs + MINUTES_AFTER * 60_000,
    by: actorOf('quality-1'),
    name: `measure ${dieId} ${at}`,
  };
  const onDay = calendar.day(row.offset);
  return act(when, 'read-edge', (db, permit, entered, env) =>
    readEdge(db, permit, { ...entered, toolId: dieId, finding, onDay }, env),
  );
}
