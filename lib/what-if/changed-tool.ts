import type { ShopFacts, ToolFacts } from '../outlook/shop-facts';
import { ok, type Result, refuse } from '../result';
import { CALIBRATED_ROLES } from '../shop/vocabulary';
import type { ChangeOf } from './change';

type ToolChange = ChangeOf<'lose-tool' | 'free-tool' | 'calibrate-tool' | 'regrind-tool'>;

/** The facts with one tool lost, back in the crib, calibrated, or sent for a regrind. Refuses what cannot be. */
export function changeTool(facts: ShopFacts, change: ToolChange): Result<ShopFacts> {
  const tool = facts.tools.find(({ id }) => id === change.toolId);
  if (tool === undefined || tool.state === 'scrapped' || tool.state === 'lost')
    return refuse('unknown-tool', `There is no tool ${change.toolId} in the shop.`, 'toolId');
  const changed = changedTool(tool, change);
  if (!changed.ok) return changed;
  return ok({ ...facts, tools: facts.tools.map((known) => (known === tool ? changed.value : known)) });
}

function changedTool(tool: ToolFacts, change: ToolChange): Result<ToolFacts> {
  const free = { state: 'in-crib', jobLineId: null, backOnDay: null, firstOffOwed: false } as const;
  switch (change.kind) {
    case 'lose-tool':
      return ok({ ...tool, state: 'lost', jobLineId: null, backOnDay: null });
    case 'free-tool':
      if (tool.state === 'regrind')
        return refuse('at-regrind', `${tool.id} is out for regrind: say when it comes back.`, 'toolId');
      return ok({ ...tool, ...free, reservation: null });
    case 'calibrate-tool':
      if (!CALIBRATED_ROLES.includes(tool.role))
        return refuse('not-calibrated', `${tool.id} is nothing that is calibrated.`, 'toolId');
      return ok({ ...tool, ...free, dueOnDay: change.dueOnDay });
    case 'regrind-tool':
      if (tool.role !== 'blade')
        return refuse('not-a-blade', `${tool.id} is no blade: only blades are reground.`, 'toolId');
      return ok({ ...tool, state: 'regrind', jobLineId: null, backOnDay: change.backOnDay });
  }
}
