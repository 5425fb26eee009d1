import { invariant } from '../invariant';
import { pitchMm } from './pitch';

const ROOT_3 = Math.sqrt(3);
/** Flank angle of a unified thread, half of 60°: cot 30°, and cos 30°·cot 30°. */
const COT = ROOT_3;
const LEAD_TERM = 1.5;

/** A thread measured over three wires, one setting. */
export interface WireSetting {
  readonly tpi: number;
  /** W: diameter of the wires, all three alike, mm. */
  readonly wireMm: number;
  /** Adds what the lead angle does to the wires' seat. At most 0.0013 mm on the sizes of a tube shop; left out by default. */
  readonly leadAngle?: boolean;
}

/**
 * Best wire, mm: the one that touches the flanks at the pitch line, so that an error of the flank angle does not show.
 * W = P ÷ (2·cos 30°) = 0.57735·P. Domain: n > 0. Source: geometry of a 60° thread.
 */
export function bestWireMm(tpi: number): number {
  return pitchMm(tpi) / ROOT_3;
}

/** Smallest and largest wire of use, mm. */
export interface WireRange {
  readonly leastMm: number;
  readonly mostMm: number;
}

/**
 * Wires that can be used at all: the least just stands proud of the crests (W = 7·√3 ÷ 24·P = 0.505·P), the most just rests on the
 * crests' edges (W = 7 ÷ (4·√3)·P = 1.010·P). Crest flat P ÷ 8. Source: geometry of the basic profile of ASME B1.1.
 */
export function wireRangeMm(tpi: number): WireRange {
  const pitch = pitchMm(tpi);
  return { leastMm: ((7 * ROOT_3) / 24) * pitch, mostMm: (7 / (4 * ROOT_3)) * pitch };
}

/** Whether wires of this diameter seat on the flanks and stand proud of the crests. */
export function isUsableWire({ tpi, wireMm }: { readonly tpi: number; readonly wireMm: number }): boolean {
  const { leastMm, mostMm } = wireRangeMm(tpi);
  return wireMm > leastMm && wireMm < mostMm;
}

/**
 * Measurement over three wires, mm: M = E − 0.866025·P + 3·W; with the lead angle, + 0.75·W·tan²λ, tan λ = P ÷ (π·E).
 * Symbols: E, pitch diameter; P, pitch; W, wire. Domain: E > 0, W > 0.
 * Source: published. Handbook three-wire formula; the lead-angle term after ASME B1.2, from memory.
 */
export function overWiresMm(thread: WireSetting & { readonly pitchDiameterMm: number }): number {
  const { pitchDiameterMm, tpi, wireMm, leadAngle = false } = thread;
  invariant(pitchDiameterMm > 0 && wireMm > 0, 'overWiresMm requires a pitch diameter and a wire above 0');
  const lead = leadAngle ? leadShareMm({ pitchDiameterMm, tpi, wireMm }) : 0;
  return pitchDiameterMm - (COT / 2) * pitchMm(tpi) + 3 * wireMm + lead;
}

/**
 * Pitch diameter, mm, of a thread that measures M over three wires: E = M + 0.866025·P − 3·W; with the lead angle the E that
 * gives M back, found by iteration. Domain: W > 0, and M large enough that E > 0. Source as `overWiresMm`.
 */
export function pitchDiameterFromWiresMm(reading: WireSetting & { readonly overWiresMm: number }): number {
  const { tpi, wireMm, leadAngle = false } = reading;
  const plainMm = reading.overWiresMm + (COT / 2) * pitchMm(tpi) - 3 * wireMm;
  invariant(
    wireMm > 0 && plainMm > 0,
    'pitchDiameterFromWiresMm requires a measurement larger than its wires',
  );
  if (!leadAngle) return plainMm;
  let pitchDiameterMm = plainMm;
  for (let step = 0; step < LEAD_STEPS; step++)
    pitchDiameterMm = plainMm - leadShareMm({ pitchDiameterMm, tpi, wireMm });
  return pitchDiameterMm;
}
/** Each step shrinks the error by more than a hundredfold on any thread of the tables. */
const LEAD_STEPS = 12;

/** λ, degrees: how steeply the thread climbs at its pitch diameter. tan λ = P ÷ (π·E). Domain: E > 0. */
export function leadAngleDeg({
  pitchDiameterMm,
  tpi,
}: {
  readonly pitchDiameterMm: number;
  readonly tpi: number;
}): number {
  invariant(pitchDiameterMm > 0, 'leadAngleDeg requires a pitch diameter above 0');
  return (Math.atan(pitchMm(tpi) / (Math.PI * pitchDiameterMm)) * 180) / Math.PI;
}

function leadShareMm(thread: { pitchDiameterMm: number; tpi: number; wireMm: number }): number {
  const tangent = pitchMm(thread.tpi) / (Math.PI * thread.pitchDiameterMm);
  return (LEAD_TERM / 2) * thread.wireMm * tangent ** 2;
}
