import { ok, type Refusal, type Result, refuse } from '../result';
import { basicPitchDiameterMm } from '../thread/pitch-diameter';
import { overWiresMm, pitchDiameterFromWiresMm, wireRangeMm } from '../thread/three-wire';
import { type LengthWindow, readLength } from '../units/doubt-length';
import type { LengthUnit } from '../units/parse-length';
import type { Finding } from './reading';

/** A thread that a die cuts, as far as a reading of it can be doubted: basic major diameter, threads per inch. */
export interface CutThread {
  readonly majorMm: number;
  readonly tpi: number;
}

/** A length as it was typed, with the unit chosen beside it. */
export interface Typed {
  readonly text: string;
  readonly unit: LengthUnit;
}

/** What was typed of a thread: its pitch diameter, or the measurement over wires and the wires; and the limits. */
export interface TypedPitch {
  readonly pitchDiameter?: Typed;
  readonly overWires?: Typed;
  readonly wire?: Typed;
  readonly min: Typed;
  readonly max: Typed;
  readonly instrument: 'wires' | 'micrometer';
}

/** A reading this far from the basic size is no reading of this thread: a die does not cut a tenth over. */
const PITCH_SPREAD = 0.1;
/** A wear land that a loupe can tell, and the widest that a blade is still in service with, mm. Common practice, no source. */
const LAND_WINDOW: LengthWindow = { leastMm: 0.012, mostMm: 1.2 };

type PitchFinding = Extract<Finding, { method: 'pitch-diameter' }>;

/**
 * Reads what was typed of a thread and finds its pitch diameter. Over wires: E = M + 0.866025·P − 3·W. Where the die's thread is known, a
 * length that lies more than a tenth from it is refused: as a slip of the unit where the other unit fits, else as another thread's.
 * Errors: lengths that cannot be read; `unit-slip`; `far`; wires that do not seat. Refusals name the field.
 */
export function readTypedPitch(typed: TypedPitch, thread?: CutThread): Result<PitchFinding, Refusal> {
  const window = thread && around(basicPitchDiameterMm(thread));
  const limits = { min: read(typed.min, 'min', window), max: read(typed.max, 'max', window) };
  if (!limits.min.ok) return limits.min;
  if (!limits.max.ok) return limits.max;
  if (limits.max.value <= limits.min.value)
    return refuse('limits', 'The upper limit must lie above the lower one.', 'max');
  const size = typed.overWires === undefined ? direct(typed, window) : overWires(typed, thread, window);
  if (!size.ok) return size;
  const { instrument } = typed;
  return ok({
    method: 'pitch-diameter',
    minMm: limits.min.value,
    maxMm: limits.max.value,
    instrument,
    ...size.value,
  });
}

/** Reads a wear land, mm: 0 is a reading too. A land finer than a loupe tells, or wider than any blade's, is taken for a slip. */
export function readTypedLand(typed: Typed): Result<number, Refusal> {
  if (/^0*\.?0*\s*(?:mm|in)?$/.test(typed.text) && /0/.test(typed.text)) return ok(0);
  const land = readLength({ ...typed, field: 'land' }, LAND_WINDOW);
  return land.ok ? ok(land.value.lengthMm) : land;
}

function direct({ pitchDiameter }: TypedPitch, window: LengthWindow | undefined) {
  const size = read(pitchDiameter ?? { text: '', unit: 'in' }, 'pitchDiameter', window);
  return size.ok ? ok({ pitchDiameterMm: size.value }) : size;
}

function overWires(
  typed: TypedPitch,
  thread: CutThread | undefined,
  window: LengthWindow | undefined,
): Result<Pick<PitchFinding, 'pitchDiameterMm' | 'overWires'>, Refusal> {
  const empty = { text: '', unit: 'in' } as const;
  if (thread === undefined)
    return refuse(
      'wires',
      'The shop does not know this die’s thread: write its pitch diameter.',
      'overWires',
    );
  const { leastMm, mostMm } = wireRangeMm(thread.tpi);
  const wire = readLength({ ...(typed.wire ?? empty), field: 'wire' }, { leastMm, mostMm });
  if (!wire.ok) return wire;
  const wireMm = wire.value.lengthMm;
  if (wireMm <= leastMm || wireMm >= mostMm)
    return refuse(
      'wires',
      `Wires of ${wireMm.toFixed(3)} mm do not seat in this thread: take ${leastMm.toFixed(3)} to ${mostMm.toFixed(3)} mm.`,
      'wire',
    );
  const expected = overWiresMm({ pitchDiameterMm: basicPitchDiameterMm(thread), tpi: thread.tpi, wireMm });
  const over = read(typed.overWires ?? empty, 'overWires', window && around(expected));
  if (!over.ok) return over;
  const pitchDiameterMm = pitchDiameterFromWiresMm({ overWiresMm: over.value, tpi: thread.tpi, wireMm });
  return ok({ pitchDiameterMm, overWires: { overWiresMm: over.value, wireMm } });
}

function around(lengthMm: number): LengthWindow {
  return { leastMm: lengthMm * (1 - PITCH_SPREAD), mostMm: lengthMm * (1 + PITCH_SPREAD) };
}

function read(typed: Typed, field: string, window: LengthWindow | undefined): Result<number, Refusal> {
  const length = readLength({ ...typed, field }, window);
  if (!length.ok) return length;
  const { lengthMm } = length.value;
  if (window !== undefined && (lengthMm < window.leastMm || lengthMm > window.mostMm))
    return refuse(
      'far',
      `${lengthMm.toFixed(1)} mm is no measure of this die’s thread: ${window.leastMm.toFixed(1)} to ${window.mostMm.toFixed(1)} mm would be. Check the figure.`,
      field,
    );
  return ok(lengthMm);
}
