import { describe, expect, it } from 'vitest';
import {
  acceptedByLine,
  findAcceptances,
  findLineStanding,
  listAcceptances,
  nextEndNo,
} from '@/db/queries/acceptance';
import { endsSinceIssue } from '@/db/queries/ends-since-issue';
import { linesWithHeldEnds } from '@/db/queries/held-ends';
import { readShopFacts } from '@/db/queries/shop-facts';
import { lastBottle, lastEdgeTool } from '@/db/queries/used-on-line';
import { acceptSender, acceptShop, CONE, GO, NG } from '../../support/accept-shop';
import { must, NOW_MS, sentence } from '../../support/db';
import { sender } from '../../support/send';

// source: hand. Counted from what is entered just above.
describe('what was accepted of a line', () => {
  it('is listed in order, numbered on, and known to the plan', () => {
    const db = acceptShop();
    const { accept } = acceptSender(db);
    const a = must(accept(3, { firstEndNo: 1 }, NOW_MS)).id;
    const b = must(accept(2, { firstEndNo: 4 }, NOW_MS + 1000)).id;
    expect(listAcceptances(db, 'J-1.1').map(({ id }) => id)).toEqual([a, b]);
    expect([...findAcceptances(db, [a, 'none', b]).keys()].sort()).toEqual([a, b].sort());
    expect([nextEndNo(db, 'J-1.1'), nextEndNo(db, 'J-9.1')]).toEqual([6, 1]);
    expect(acceptedByLine(db).get('J-1.1')).toMatchObject({ acceptedEnds: 5, releasableEnds: 5 });
    expect(readShopFacts(db, { today: '2026-03-02' }).lines[0]).toMatchObject({
      acceptedEnds: 5,
      releasableEnds: 5,
    });
    must(sender(db).close('J-1', 'done'));
    expect(acceptedByLine(db).size).toBe(0);
  });

  it('the tools and the bottle that were last used on it', () => {
    const db = acceptShop();
    must(sender(db).cut('D-56-01', 3, { jobLineId: 'J-1.1', fluidId: 'F-L01' }));
    expect(lastEdgeTool(db, 'J-1.1', 'thread')).toBe('D-56-01');
    expect(lastEdgeTool(db, 'J-1.1', 'cone')).toBeUndefined();
    expect([lastBottle(db, 'J-1.1'), lastBottle(db, 'J-9.1')]).toEqual(['F-L01', undefined]);
  });
});

describe('Q17: an end was accepted with no gauge recorded', () => {
  // source: hand. Two ends without any gauge, one gauged again.
  it('is not releasable; gauged again now it is, and what was entered first stays to be seen', () => {
    const db = acceptShop();
    const { accept } = acceptSender(db);
    const blind = must(accept(2, { gauges: [] })).id;
    expect(findLineStanding(db, 'J-1.1')).toMatchObject({ acceptedEnds: 2, releasableEnds: 0 });
    expect(linesWithHeldEnds(db)).toEqual([{ jobLineId: 'J-1.1', ends: 2 }]);
    must(accept(2, { regaugesId: blind }, NOW_MS + 60_000));
    expect(findLineStanding(db, 'J-1.1')).toMatchObject({ acceptedEnds: 2, releasableEnds: 2, held: [] });
    expect(linesWithHeldEnds(db)).toEqual([]);
    expect(listAcceptances(db, 'J-1.1').map(({ gaugesMissing }) => gaugesMissing.length)).toEqual([3, 0]);
  });

  it('not back-dated: a day that is past is refused, and no more ends are gauged again than there were', () => {
    const db = acceptShop();
    const { accept } = acceptSender(db);
    const blind = must(accept(2, { gauges: [] })).id;
    expect(sentence(accept(2, { regaugesId: blind, gaugedOnDay: '2026-02-20' }))).toMatch(/Gauge them again/);
    expect(sentence(accept(3, { regaugesId: blind }))).toMatch(/Only 2 ends were accepted there/);
    expect(sentence(accept(1, { regaugesId: 'nothing' }))).toMatch(/not among those accepted/);
    expect(sentence(accept(1, { regaugesId: blind, jobLineId: null }))).toMatch(/another line/);
  });
});

describe('Q15: a right-hand die was in the left-hand slot', () => {
  // source: hand. Issued, then seven ends cut and five accepted with it; three were cut before.
  it('what it has cut since it was issued is listed line by line, to be gauged with the left-hand ring', () => {
    const db = acceptShop();
    const send = sender(db);
    const { accept } = acceptSender(db);
    must(send.cut('D-56-01', 3, { jobLineId: 'J-1.1', heat: 'C4407', cutAtMs: NOW_MS - 86_400_000 }));
    must(send.issue('D-56-01', { jobLineId: 'J-1.1' }));
    must(send.cut('D-56-01', 7, { jobLineId: 'J-1.1', heat: 'C4407', cutAtMs: NOW_MS }));
    must(accept(5, {}, NOW_MS + 1000));
    expect(endsSinceIssue(db, 'D-56-01')).toEqual({
      issuedAtMs: NOW_MS,
      lines: [{ jobLineId: 'J-1.1', connectionId: '9-16-high', heat: 'C4407', cutEnds: 7, acceptedEnds: 5 }],
    });
    expect(endsSinceIssue(db, 'B-56-01')).toEqual({ issuedAtMs: null, lines: [] });
  });

  it('a ring of the other hand never accepts them', () => {
    const gauges = [{ ...GO, toolId: 'G-56-GO-RH' }, NG, CONE];
    expect(sentence(acceptSender(acceptShop()).accept(1, { gauges }))).toBe(
      'HAND MISMATCH: G-56-GO-RH is right hand, the thread is left hand.',
    );
  });
});
