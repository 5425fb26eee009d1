import type { Db } from '@/db/open';

interface Row {
  readonly id: string;
  readonly kind: string;
  readonly subject_id: string;
  readonly server_at_ms: number;
  readonly payload: string;
}

interface Good {
  readonly day: string;
  readonly ms: number;
}

/**
 * The suspect ends by the plainest way: read every entry that nobody took back, walk through them once in the order of
 * the days, remember where the gauge was last known good, and take what was accepted with it after that. Shares nothing with
 * the program but the ledger’s rows. A certificate that does not say how the gauge was found counts only as the one before
 * another such certificate, and a check on a plug that was itself found out counts as nothing.
 */
export function suspectsByWalk(
  db: Db,
  { gaugeId, foundAtMs, foundEntryId }: { gaugeId: string; foundAtMs: number; foundEntryId: string | null },
) {
  const rows = db.$client.prepare('SELECT * FROM entry ORDER BY seq').all() as (Row & {
    reverses_id: string | null;
  })[];
  const gone = new Set(rows.map((row) => row.reverses_id));
  const standing = rows.filter((row) => !gone.has(row.id) && row.reverses_id === null);
  const foundDay = new Date(foundAtMs).toISOString().slice(0, 10);

  // Everything that was ever said about the gauge, latest first.
  const said = standing
    .filter((row) => row.subject_id === gaugeId && row.id !== foundEntryId)
    .filter((row) => row.kind === 'gauge-calibrated' || row.kind === 'gauge-checked')
    .map((row) => ({ ...row, p: JSON.parse(row.payload) }))
    .filter(({ p, server_at_ms }) => p.onDay < foundDay || (p.onDay === foundDay && server_at_ms < foundAtMs))
    .filter(({ p, server_at_ms }) => !isDoubted(standing, p, server_at_ms))
    .sort((a, b) =>
      a.p.onDay === b.p.onDay ? b.server_at_ms - a.server_at_ms : a.p.onDay < b.p.onDay ? 1 : -1,
    );

  let good: Good | undefined;
  let silentSeen = false;
  for (const { kind, p, server_at_ms: ms } of said) {
    const point = { day: p.onDay, ms };
    if (kind === 'gauge-checked') {
      if (p.result === 'pass' && p.qualifies) good = point;
    } else if (p.result === 'pass') {
      if (p.asFound === 'in' || p.asFound === 'out') good = point;
      else if (silentSeen) good = point;
      else silentSeen = true;
    }
    if (good !== undefined) break;
  }

  const suspects = new Map<string, number>();
  const refused = new Set<string>();
  for (const row of standing.filter(({ kind }) => kind === 'ends-accepted')) {
    const p = JSON.parse(row.payload);
    const words = p.gauges.filter((one: { toolId: string }) => one.toolId === gaugeId);
    if (words.length === 0 || p.gaugedAtMs > foundAtMs) continue;
    if (good !== undefined && !isAfter(p, good)) continue;
    if (p.decision === 'accepted' && words.every((one: { verdict: string }) => one.verdict === 'pass'))
      suspects.set(row.id, p.endCount);
    if (p.decision === 'refused' && words.some((one: { verdict: string }) => one.verdict === 'fail'))
      refused.add(row.id);
  }
  const skippedCheck = standing.some(
    (row) => row.subject_id === gaugeId && isDoubted(standing, JSON.parse(row.payload), row.server_at_ms),
  );
  return { suspects, refused, skippedCertificate: silentSeen && good !== undefined, skippedCheck };
}

/**
 * A check on a plug that was found out, made before that and after the plug was last found good itself: it shows nothing.
 * Plugs are only ever found good by a certificate that says how they came in, in these histories.
 */
// biome-ignore lint/suspicious/noExplicitAny: raw JSON of the ledger, read on purpose without the program's types
function isDoubted(standing: readonly Row[], p: any, atMs: number): boolean {
  if (!p.againstToolId) return false;
  const of = (kind: string) => standing.filter((row) => row.kind === kind);
  return of('recall-opened').some((opened) => {
    if (JSON.parse(opened.payload).gaugeId !== p.againstToolId || atMs > opened.server_at_ms) return false;
    return !of('gauge-calibrated').some((row) => {
      const good = JSON.parse(row.payload).onDay;
      const beforeOpening = row.server_at_ms < opened.server_at_ms;
      // The plug was found good after this check and before it was found out: it was good when the check was made.
      return (
        row.subject_id === p.againstToolId && beforeOpening && row.server_at_ms > atMs && good >= p.onDay
      );
    });
  });
}

/** After it by day; on its own day by the clock, unless it was written down when that day was long over. */
function isAfter(p: { gaugedOnDay: string; gaugedAtMs: number }, good: Good): boolean {
  if (p.gaugedOnDay !== good.day) return p.gaugedOnDay > good.day;
  const noonOfNextDay = Date.parse(`${good.day}T12:00:00Z`) + 86_400_000;
  return good.ms >= noonOfNextDay || p.gaugedAtMs > good.ms;
}
