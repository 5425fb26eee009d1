import type { Day } from '../calendar/day';
import type { EdgeKind } from '../shop/vocabulary';

/** What one line asks of one kind of edge. */
export interface EdgeTask {
  readonly lineId: string;
  readonly kind: EdgeKind;
  /** Ends still to be cut with it. */
  readonly ends: number;
  /** How sure the shop wants to be that one edge does it. */
  readonly required: number;
  readonly startOnDay: Day;
  readonly dueOnDay: Day;
  /** Exposure of one end in each draw: turns or mm³ times the material's factor. */
  readonly perEnd: Float64Array;
  /** Tools that may be given to it, in any order; only the one in hand where the line has one already. */
  readonly toolIds: readonly string[];
  /** Tools that can follow when the first may not last: all that fit and are usable. */
  readonly spareIds: readonly string[];
  /** First day on which each tool that fits is free for it, lines of the plan apart; those without a known day are missing. */
  readonly freeFromDay: ReadonlyMap<string, Day>;
}

/** A tool with what its edge has left in each draw. */
export interface EdgeSupply {
  readonly toolId: string;
  readonly life: Float64Array;
}

/** What one tool does for one task. */
export interface TaskWork {
  /** Share of the draws in which it cuts every end. */
  readonly probability: number;
  /** Mean of the whole ends that it cuts. */
  readonly madeEnds: number;
}

/** What a tool does for tasks one after the other, and what is left of it. */
export interface ToolWork {
  readonly work: readonly TaskWork[];
  readonly left: Float64Array;
}

/**
 * What one edge does for tasks in the order given, whole ends only, draw by draw; what the first leave is there for the
 * next. An edge that wears out in a task makes nothing for those after it. Source: formula (counts over the draws).
 */
export function toolWork(life: Float64Array, tasks: readonly EdgeTask[]): ToolWork {
  const left = Float64Array.from(life);
  return { left, work: tasks.map((task) => cutWith(left, task)) };
}

/** Takes one task out of what is left, in place. */
export function cutWith(left: Float64Array, { ends, perEnd }: EdgeTask): TaskWork {
  let [done, made] = [0, 0];
  for (let k = 0; k < left.length; k++) {
    const has = left[k] as number;
    const each = perEnd[k] as number;
    if (has >= ends * each) {
      done += 1;
      made += ends;
      left[k] = has - ends * each;
    } else {
      made += Math.floor(has / each);
      left[k] = 0;
    }
  }
  return { probability: done / left.length, madeEnds: made / left.length };
}

/** Whether both run on some day, so that one tool cannot serve them both. */
export function overlaps(a: EdgeTask, b: EdgeTask): boolean {
  return a.startOnDay <= b.dueOnDay && b.startOnDay <= a.dueOnDay;
}

/** Start, then due day, then line: the order in which tasks are served. */
export function compareTasks(a: EdgeTask, b: EdgeTask): number {
  if (a.startOnDay !== b.startOnDay) return a.startOnDay < b.startOnDay ? -1 : 1;
  if (a.dueOnDay !== b.dueOnDay) return a.dueOnDay < b.dueOnDay ? -1 : 1;
  return a.lineId < b.lineId ? -1 : 1;
}

/** Mean of what an edge has left: by this, "fullest" and "most worn" are told. */
export function meanLife(life: Float64Array): number {
  return life.reduce((sum, amount) => sum + amount, 0) / life.length;
}
