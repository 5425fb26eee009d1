import { ok, type Refusal, type Result, refuse } from '../result';
import type { Connection } from '../shop/noun';
import { CALIBRATED_ROLES, ROLE_LABEL, type Role } from '../shop/vocabulary';
import { checkGauge, type GaugeFacts } from './gauge-fit';
import { requiredGauges } from './required-gauges';

/** What a first-off said: `not-gauged` when somebody looked at the end and had no gauge for it. */
export type FirstOffResult = 'pass' | 'fail' | 'not-gauged';

/** A first-off as it is written down, with the gauges that were named. */
export interface FirstOff {
  readonly result: FirstOffResult;
  readonly onDay: string;
  readonly atMs: number;
  readonly gauges: readonly { readonly toolId: string; readonly facts: GaugeFacts | undefined }[];
}

/** The tool whose first end it is, with every size that it cuts. */
export interface FirstOffTool {
  readonly role: Role;
  readonly connections: readonly Connection[];
}

/**
 * The gauges that a first-off is gauged with: the cone gauge for a blade, both rings for a die.
 * @example firstOffRoles('blade').join() // => "cone-gauge"
 * @example firstOffRoles('die').join() // => "go-ring,not-go-ring"
 */
export function firstOffRoles(role: Role): Role[] {
  if (role === 'blade') return requiredGauges(['cone']);
  return role === 'die' ? requiredGauges(['thread']) : [];
}

/**
 * Whether a first-off may be written down so. No gauge that is set aside, no gauge at all, or out of date has a say; and a
 * first-off passes only with every gauge that the work asks for named, of the tool’s own size and hand. Without them it is
 * looked at and not gauged, and stays owed. Source: common practice, no source (as for ends: an end without a recorded
 * gauge is not released).
 */
export function decideFirstOff(tool: FirstOffTool, said: FirstOff): Result<null, Refusal> {
  const { gauges, onDay, result } = said;
  const aside = gauges.find(({ facts }) => !canGauge(facts));
  if (aside !== undefined)
    return refuse(
      'gauge',
      `${aside.toolId} is no gauge in use here, or it is set aside. Take another one.`,
      AT,
    );
  const outOfDate = gauges.find(({ facts }) => (facts?.dueOnDay ?? '') < onDay);
  if (outOfDate !== undefined)
    return refuse(
      'calibration',
      `${outOfDate.toolId} is out of calibration. Do not accept with this gauge.`,
      AT,
    );
  return result === 'pass' ? checkGauged(tool, said) : ok(null);
}

function checkGauged(tool: FirstOffTool, { gauges, onDay, atMs }: FirstOff): Result<null, Refusal> {
  const named = gauges.flatMap(({ facts }) => facts ?? []);
  const missing = firstOffRoles(tool.role).filter((role) => !named.some((gauge) => gauge.role === role));
  if (missing.length > 0)
    return refuse(
      'gauges-missing',
      `Name the ${missing.map((role) => ROLE_LABEL[role]).join(' and the ')} it was gauged with. Looked at without gauges it stays owed.`,
      `gauge-${missing[0]}`,
    );
  for (const gauge of named) {
    const used = { toolId: gauge.id, role: gauge.role, verdict: 'pass', turns: null } as const;
    const fits = tool.connections.map((connection) =>
      checkGauge(used, gauge, { connection, gaugedOnDay: onDay, gaugedAtMs: atMs }),
    );
    const [first] = fits;
    if (first !== undefined && fits.every(({ ok: fit }) => !fit)) return first;
  }
  return ok(null);
}

/** Kept under calibration, in the crib or with somebody: not away, lost or set aside. */
function canGauge(facts: GaugeFacts | undefined): boolean {
  const atHand = facts?.state === 'in-crib' || facts?.state === 'issued';
  return facts !== undefined && atHand && CALIBRATED_ROLES.includes(facts.role);
}

const AT = 'gaugeIds';
