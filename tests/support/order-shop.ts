import { addDays } from '@/lib/calendar/day';
import { exposureOfEnd } from '@/lib/wear/connection-exposure';
import { statedDraws } from './life-draws';
import { lineFacts, setParts, shopRecord, TODAY } from './shop-record';

const found = setParts().find(({ role }) => role === 'die');
const size = shopRecord().connections[0];
if (found === undefined || size === undefined) throw new Error('the set has a die and a size');

/** The die of the hand-built shop, and the turns of one of its ends. */
export const ORDER_DIE = found;
export const END_TURNS = exposureOfEnd({ operation: 'thread', connection: size });

/** A line that is threaded only, days from today. */
export function threadLine(id: string, ends: number, start: number, due: number) {
  const days = { startOnDay: addDays(TODAY, start), dueOnDay: addDays(TODAY, due) };
  return lineFacts({ id, jobId: id, ends, operations: ['thread'], ...days });
}

/** Every new die lasts exactly so many ends; so do the tools named. */
export function exactLives(newEnds: number, tools: Record<string, number> = {}, drawCount = 64) {
  const lives = Object.entries(tools).map(([id, ends]) => [id, ends * END_TURNS] as const);
  return statedDraws({
    ...{ drawCount, factors: { '316-cw': 1 }, tools: Object.fromEntries(lives) },
    parts: { [ORDER_DIE.id]: newEnds * END_TURNS },
  });
}
