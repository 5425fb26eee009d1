import 'server-only';
import { today } from '@/app/_server/clock';
import { shopFacts } from '@/app/_server/outlook';
import { dayText } from '@/app/_shared/format';
import { shopDb } from '@/db/client';
import { findLineStanding, listAcceptances, nextEndNo } from '@/db/queries/acceptance';
import { findJob, findLine, type LineRow } from '@/db/queries/jobs';
import { listPiecesOwedOn } from '@/db/queries/pieces-owed';
import { lastBottle, lastEdgeTool } from '@/db/queries/used-on-line';
import { appliedRule, exposedThreadsRule } from '@/lib/acceptance/applied-rule';
import { type GaugeProposal, proposeGauge } from '@/lib/acceptance/propose-gauges';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import type { Connection } from '@/lib/shop/noun';
import { ROLE_LABEL, type Role } from '@/lib/shop/vocabulary';

/** A gauge as the form shows it. */
export interface GaugeField {
  readonly role: Role;
  readonly label: string;
  readonly toolId: string;
  readonly candidateIds: readonly string[];
  readonly hint: string;
}

/** Everything that the screen of one line stands on. */
export function acceptView(lineId: string) {
  const db = shopDb();
  const line = findLine(db, lineId);
  if (line === undefined) return undefined;
  const facts = shopFacts();
  const connection = facts.connections.find(({ id }) => id === line.connectionId);
  const rules = {
    job: findJob(db, line.jobId)?.acceptanceRule,
    sizeNotGoTurnsMax: connection?.notGoTurnsMax ?? null,
    shop: facts.shop?.acceptanceRule,
  };
  return {
    line,
    connection,
    rule: appliedRule(rules),
    exposed: exposedThreadsRule(rules),
    standing: findLineStanding(db, line.id),
    piecesOwed: listPiecesOwedOn(db, line.id),
    looks: listAcceptances(db, line.id),
    nextEndNo: nextEndNo(db, line.id),
    gauges: connection === undefined ? [] : gaugeFields(line, connection, facts),
    bladeId: issuedFor(facts, line.id, 'blade') ?? lastEdgeTool(db, line.id, 'cone') ?? '',
    dieId: issuedFor(facts, line.id, 'die') ?? lastEdgeTool(db, line.id, 'thread') ?? '',
    fluidId: issuedFor(facts, line.id, 'fluid') ?? lastBottle(db, line.id) ?? '',
  };
}
export type AcceptView = NonNullable<ReturnType<typeof acceptView>>;

function gaugeFields(line: LineRow, connection: Connection, facts: ShopFacts): GaugeField[] {
  const parts = new Map(facts.parts.map((part) => [part.id, part]));
  const roles: Role[] = [
    ...(line.operations.includes('thread') ? (['go-ring', 'not-go-ring'] as const) : []),
    ...(line.operations.includes('cone') ? (['cone-gauge'] as const) : []),
    ...(line.operations.includes('thread') ? (['length-gauge'] as const) : []),
  ];
  return roles.map((role) => {
    const wanted = { role, connectionId: connection.id, hand: connection.hand, lineId: line.id };
    return fieldOf(proposeGauge(facts.tools, parts, { ...wanted, today: facts.today }));
  });
}

function fieldOf({ role, toolId, dueOnDay, candidateIds }: GaugeProposal): GaugeField {
  const due = dueOnDay === null ? '' : `Good to the end of ${dayText(dueOnDay, today())}`;
  const choice =
    candidateIds.length === 0 ? 'None in the house and in date' : `Scan it: ${candidateIds.join(', ')}`;
  const label = ROLE_LABEL[role];
  return { role, label, toolId: toolId ?? '', candidateIds, hint: due || choice };
}

function issuedFor(facts: ShopFacts, lineId: string, role: Role): string | undefined {
  return facts.tools.find((tool) => tool.jobLineId === lineId && tool.role === role)?.id;
}
