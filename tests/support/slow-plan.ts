import { addDays } from '@/lib/calendar/day';
import type { PlanInput } from '@/lib/capability/check-plan';
import type { Arrival, PlanLine, SetItem } from '@/lib/capability/plan-input';

/**
 * The plan check done again, slowly and by other means, for lines in which only dies, blades and GO rings matter and
 * everything else abounds. Lives by the theorem instead of the walk: in each draw the most that lines 1…i can cut is
 * the smallest cut, tried over every subset of lines. Rings and dies by trying every assignment, day by day.
 */
export interface SlowVerdict {
  readonly lineId: string;
  readonly verdict: string;
  readonly pMade: number;
  readonly canCut: boolean;
  readonly canAccept: boolean;
}

/** A die, blade or ring with the day from which it can be used; one on order is the same with a later day. */
interface Piece {
  readonly item: Pick<SetItem, 'role' | 'hand' | 'fitsConnectionIds' | 'dueOnDay'>;
  /** The day that counts for needs that are yes or no, with the required probability. */
  readonly freeOnDay: (line: PlanLine) => string;
  /** The day of one draw. */
  readonly comesOnDay: (k: number) => string;
  readonly life: (k: number) => number;
}

export function slowVerdicts({ today, lines, items, arrivals, draws, targets }: PlanInput): SlowVerdict[] {
  const required = targets?.requiredProbability ?? 0.9;
  const floor = targets?.floorProbability ?? 0.5;
  const pieces: Piece[] = [];
  for (const item of items) {
    if (item.state === 'quarantined' || item.needsFirstOff) continue;
    const freeOnDay = item.state === 'in-crib' ? '0000-00-00' : item.backOnDay;
    if (freeOnDay)
      pieces.push({
        item,
        freeOnDay: () => freeOnDay,
        comesOnDay: () => freeOnDay,
        life: (k) => draws.residualLife(item.toolId)?.[k] ?? 0,
      });
  }
  const counts: Record<string, number> = {};
  for (const order of [...arrivals].sort((a, b) => (a.orderId < b.orderId ? -1 : 1))) {
    for (let n = 0; n < order.quantity; n++) {
      const index = counts[order.partId] ?? 0;
      counts[order.partId] = index + 1;
      const item = { ...order, dueOnDay: '9999-01-01' };
      pieces.push({
        item,
        freeOnDay: (line) => firmDay(order, line.requiredProbability ?? required, today),
        comesOnDay: (k) => drawnDay(order, k, today),
        life: (k) => draws.newLife(order.partId, index)?.[k] ?? 0,
      });
    }
  }
  const queue = [...lines].sort((a, b) => (queueKey(a) < queueKey(b) ? -1 : 1));
  const hopeless = (line: PlanLine) =>
    (['die', 'blade'] as const).some(
      (role) => !pieces.some((p) => fits(p, role, line) && p.freeOnDay(line) < NEVER),
    );
  const going = queue.filter((line) => !hopeless(line));
  return queue.map((line) => {
    const before = going.slice(0, Math.max(0, going.indexOf(line)));
    const rivals = hopeless(line)
      ? going.filter((other) => queue.indexOf(other) < queue.indexOf(line))
      : before;
    const has = (role: SetItem['role']) => hasPiece(role, line, rivals, pieces);
    const canCut = has('die') && has('blade');
    const canAccept = has('go-ring');
    let made = 0;
    for (let k = 0; k < draws.drawCount; k++) {
      const enough = (['die', 'blade'] as const).every(
        (role) =>
          pieces.some((p) => fits(p, role, line) && p.comesOnDay(k) <= line.startOnDay) &&
          lifeFor(role, line, rivals, pieces, draws, k) >=
            cutsOf(role, line) * perEnd(role, line, draws, k) - 1e-6,
      );
      if (enough) made++;
    }
    const pMade = made / draws.drawCount;
    const verdict =
      !canCut || !canAccept || pMade < floor ? 'cannot-make-now' : pMade < required ? 'at-risk' : 'can-make';
    return { lineId: line.lineId, verdict, pMade, canCut, canAccept };
  });
}

const NEVER = '9999-12-31';

function drawnDay({ arrivalDayDraws, expectedOnDay }: Arrival, k: number, today: string): string {
  if (arrivalDayDraws === undefined) return expectedOnDay;
  const inDays = arrivalDayDraws[k] ?? Number.POSITIVE_INFINITY;
  return Number.isFinite(inDays) ? addDays(today, inDays) : NEVER;
}

/** The earliest day by which the order has come in the required share of draws: tried day by day. */
function firmDay(order: Arrival, required: number, today: string): string {
  const { arrivalDayDraws: days, expectedOnDay } = order;
  if (days === undefined) return expectedOnDay;
  for (let inDays = 0; inDays < 400; inDays++) {
    let come = 0;
    for (let k = 0; k < days.length; k++) if ((days[k] as number) <= inDays) come++;
    if (come / days.length >= required - 1e-12) return addDays(today, inDays);
  }
  return NEVER;
}

function queueKey(line: PlanLine): string {
  return `${line.startOnDay} ${line.dueOnDay} ${line.lineId}`;
}

function fits({ item }: Piece, role: SetItem['role'], line: PlanLine): boolean {
  const ids = item.fitsConnectionIds;
  return (
    item.role === role &&
    (role === 'blade' || item.hand === 'LH') &&
    (ids === 'all' || ids.includes(line.connectionId))
  );
}

function perEnd(role: 'die' | 'blade', line: PlanLine, draws: PlanInput['draws'], k: number): number {
  const base = role === 'die' ? line.exposurePerEnd.thread : line.exposurePerEnd.cone;
  return (base ?? 0) * (draws.materialFactor(role, line.materialId)?.[k] ?? 0);
}

function cutsOf(
  role: 'die' | 'blade',
  { endsToMake, cutsLeft = { cone: endsToMake, thread: endsToMake } }: PlanLine,
) {
  return role === 'die' ? cutsLeft.thread : cutsLeft.cone;
}

/** Every day of the line: all earlier lines still running that day, and it, against every assignment of pieces. */
function hasPiece(
  role: SetItem['role'],
  line: PlanLine,
  rivals: readonly PlanLine[],
  pieces: readonly Piece[],
): boolean {
  const serves = (piece: Piece, user: PlanLine) =>
    fits(piece, role, user) &&
    piece.freeOnDay(user) <= user.startOnDay &&
    (role !== 'go-ring' || (piece.item.dueOnDay ?? '') >= user.dueOnDay);
  const days = [...new Set([line, ...rivals].flatMap((l) => [l.startOnDay, l.dueOnDay]))];
  return days
    .filter((day) => day >= line.startOnDay && day <= line.dueOnDay)
    .every((day) => {
      const running = rivals.filter((rival) => rival.startOnDay <= day && rival.dueOnDay >= day);
      return mostServed([...running, line], pieces, serves) > mostServed(running, pieces, serves);
    });
}

function mostServed(
  users: readonly PlanLine[],
  pieces: readonly Piece[],
  serves: (piece: Piece, user: PlanLine) => boolean,
): number {
  const [user, ...rest] = users;
  if (user === undefined) return 0;
  const given = pieces
    .filter((piece) => serves(piece, user))
    .map(
      (piece) =>
        1 +
        mostServed(
          rest,
          pieces.filter((other) => other !== piece),
          serves,
        ),
    );
  return Math.max(mostServed(rest, pieces, serves), ...given);
}

/** What is there for the line: the most that it and its rivals can cut, it without limit, less the most of its rivals. */
function lifeFor(
  role: 'die' | 'blade',
  line: PlanLine,
  rivals: readonly PlanLine[],
  pieces: readonly Piece[],
  draws: PlanInput['draws'],
  k: number,
): number {
  const demand = (user: PlanLine) =>
    user === line ? 1e12 : cutsOf(role, user) * perEnd(role, user, draws, k);
  const reaches = (piece: Piece, user: PlanLine) =>
    fits(piece, role, user) &&
    (piece.comesOnDay(k) <= user.startOnDay || piece.comesOnDay(k) < user.dueOnDay);
  const smallestCut = (users: readonly PlanLine[]) => {
    let least = Number.POSITIVE_INFINITY;
    for (let subset = 0; subset < 2 ** users.length; subset++) {
      const inside = users.filter((_, i) => (subset >> i) % 2 === 1);
      let cut = 0;
      for (const user of users) if (!inside.includes(user)) cut += demand(user);
      for (const piece of pieces) if (inside.some((user) => reaches(piece, user))) cut += piece.life(k);
      least = Math.min(least, cut);
    }
    return least;
  };
  return smallestCut([...rivals, line]) - smallestCut(rivals);
}
