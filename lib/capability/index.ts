export type { Blocker, BlockerKind, BlockerReason } from './blocker';
export { checkPlan, type PlanInput } from './check-plan';
export { COMPLETE_SET, type NeedPhase, type SetNeed, setNeeds } from './complete-set';
export type { LineVerdict, Verdict } from './line-verdict';
export {
  type Arrival,
  DEFAULT_TARGETS,
  type EndDemand,
  type Fits,
  type PlanConnection,
  type PlanLine,
  type PlanTargets,
  type SetItem,
} from './plan-input';
export { type SizeInput, type SizeProbe, type SizeStatus, sizeStatuses } from './size-status';
export { type EdgePolicy, hasWay, valuePolicy } from './value-policy';
export { verdictHeadline } from './verdict-headline';
export { type WeekCell, type WeekGridInput, type WeekRow, weekGrid } from './week-grid';
export { type BlockerWords, wordBlocker } from './word-blocker';
