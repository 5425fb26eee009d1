import { type FluidWork, isTitanium } from '../../lib/fluid/permit-fluid';
import { type Bottle, bottleStanding, pickFirst } from '../../lib/fluid/pick-first';
import { wordBar } from '../../lib/fluid/word-bar';
import type { ToolRecord } from '../../lib/ledger/tool-record';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import { fluidLotId } from '../../lib/shop/fluid-lot';
import type { Ledger } from '../ledger/ledger';
import { statement } from '../ledger/statements';
import type { Db } from '../open';

/**
 * Whether a bottle may go out, for a job line or on loan: not past its life, and permitted on the line's material and for its
 * service. The refusal names what to use instead. Any other tool passes.
 */
export function checkFluidIssue(
  db: Db,
  ledger: Ledger,
  issue: { readonly tool: ToolRecord | undefined; readonly jobLineId: string | null },
  today: string,
): Result<null, Refusal> {
  const { tool, jobLineId } = issue;
  if (tool === undefined || tool.role !== 'fluid') return ok(null);
  const bottle = bottleOf(ledger, tool);
  if (bottle === undefined) return ok(null);
  const work = workOf(ledger, jobLineId);
  // On loan nobody knows on what: only its life counts.
  const asked = work ?? { materialId: '', titanium: false, duty: 'ordinary' };
  const permitted =
    work === null ? ({ permittedMaterialIds: 'all', permittedDuties: ['ordinary'] } as const) : {};
  const standing = bottleStanding({ ...bottle, ...permitted }, asked, today);
  const why = wordBar(standing, asked, today);
  if (why === null) return ok(null);
  return refuse(
    'fluid',
    `${why} ${instead(db, ledger, { asked, permitted, toolId: tool.id, today })}`,
    'toolId',
  );
}

function instead(
  db: Db,
  ledger: Ledger,
  about: { asked: FluidWork; permitted: Partial<Bottle>; toolId: string; today: string },
): string {
  const rows = statement(db.$client, `SELECT id FROM tool WHERE role = 'fluid' AND id <> ?`).all(
    about.toolId,
  );
  const others = (rows as { id: string }[]).flatMap(({ id }) => {
    const tool = ledger.find('tool', id);
    const bottle = tool && bottleOf(ledger, tool);
    return bottle === undefined ? [] : [{ ...bottle, ...about.permitted }];
  });
  const [first] = pickFirst(others, about.asked, about.today);
  return first === undefined
    ? 'No other bottle here will do: see Fluid for what can be ordered.'
    : `Use ${first.bottle.toolId} first.`;
}

function bottleOf(ledger: Ledger, tool: ToolRecord): Bottle | undefined {
  const part = ledger.find('part', tool.partId);
  if (part === undefined) return undefined;
  const { id: toolId, state, levelMl, expiresOnDay, openedOnDay, extendedUntilDay } = tool;
  const { openedLifeDays, permittedMaterialIds, permittedDuties } = part;
  const chlorinated = ledger.find('fluid-lot', fluidLotId(tool))?.chlorinated ?? part.chlorinated;
  const days = { expiresOnDay, openedOnDay, extendedUntilDay, openedLifeDays };
  return { toolId, state, levelMl, ...days, permittedMaterialIds, permittedDuties, chlorinated };
}

/** What a job line asks of the fluid; null where it is no line that the record knows. */
function workOf(ledger: Ledger, jobLineId: string | null): FluidWork | null {
  const cut = jobLineId === null ? -1 : jobLineId.lastIndexOf('.');
  if (jobLineId === null || cut < 0) return null;
  const line = ledger
    .find('job', jobLineId.slice(0, cut))
    ?.lines.find(({ lineNo }) => String(lineNo) === jobLineId.slice(cut + 1));
  if (line === undefined) return null;
  const material = ledger.find('material', line.materialId) ?? { id: line.materialId, name: '' };
  return { materialId: line.materialId, titanium: isTitanium(material), duty: line.duty ?? 'ordinary' };
}
