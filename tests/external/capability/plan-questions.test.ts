import { describe, expect, it } from 'vitest';
import { reasonSentence } from '@/app/_shared/words/reason-words';
import { checkPlan } from '@/lib/capability/check-plan';
import type { PlanLine, SetItem } from '@/lib/capability/plan-input';
import { normalCdf } from '@/lib/numeric/normal';
import { dieVerdict } from '@/lib/outlook/die-verdict';
import type { LineFacts, ShopFacts } from '@/lib/outlook/shop-facts';
import { movedLines } from '@/lib/what-if/moved-lines';
import { buyWay } from '@/lib/what-if/ways/buy-way';
import { laterStartWay, splitWay } from '@/lib/what-if/ways/date-ways';
import { mendWay } from '@/lib/what-if/ways/mend-ways';
import { whatIf } from '@/lib/what-if/what-if';
import { statedDraws } from '../../support/life-draws';
import { completeSet, plan, planLine, setItem } from '../../support/plan-shop';
import { lineFacts, toolFacts } from '../../support/shop-record';
import { outlookOf, whatIfFacts } from '../../support/what-if-shop';

/** The stated life of the trade sheet: normal, standard deviation 0.3 of the mean; P = S(used + need) ÷ S(used). */
function workedP({ mean, used, need }: { mean: number; used: number; need: number }): number {
  const survival = (turns: number) => 1 - normalCdf((turns - mean) / (0.3 * mean));
  return survival(used + need) / survival(used);
}

/** Ours on the same inputs: the stated life as draws, one line after the other. */
function ours(
  die: { mean: number; used: number },
  lines: Partial<PlanLine>[],
  items: SetItem[] = completeSet(),
) {
  const draws = statedDraws({
    drawCount: 8192,
    tools: { DIE: die, NEW: { mean: die.mean, used: 0 }, BLADE: 1e9 },
    factors: { M: 1 },
  });
  return checkPlan(
    plan({ draws, items, lines: lines.map((line, i) => planLine({ lineId: `L${i}`, ...line })) }),
  );
}

const turns = (endsToMake: number, perEnd: number): Partial<PlanLine> => ({
  endsToMake,
  exposurePerEnd: { cone: 1, thread: perEnd },
});

function asked(facts: ShopFacts, at = 0) {
  const { ensemble, lines } = outlookOf(facts);
  const [line, verdict] = [facts.lines[at], lines.find(({ lineId }) => lineId === facts.lines[at]?.id)];
  if (line === undefined || verdict === undefined) throw new Error('the line is asked');
  return { facts, ensemble, line, verdict };
}

const second = (change: Partial<LineFacts> = {}) =>
  lineFacts({ id: 'J-2.1', jobId: 'J-2', ends: 4, ...change });

// source: formula. Worked figures of the trade sheet by the stated normal life; the decision must be the same.
describe('questions of the trade, at the plan', () => {
  it('Q1: the die broke on end 12 of 24 with 11 accepted: 13 ends are left, and the other die is a risk', () => {
    const worked = workedP({ mean: 1300, used: 1300, need: 13 * 10.5 });
    expect(worked).toBeCloseTo(0.73, 2);
    const [line] = ours({ mean: 1300, used: 1300 }, [turns(13, 10.5)]);
    expect(Math.abs((line?.pMade ?? 0) - worked)).toBeLessThan(0.001);
    expect([dieVerdict({ probability: worked, required: 0.9 }), line?.verdict]).toEqual([
      'go-with-standby',
      'at-risk',
    ]);
    const facts = whatIfFacts({
      lines: [lineFacts({ ends: 24, goodCones: 24, goodThreads: 11 })],
      tools: [...whatIfFacts().tools, toolFacts({ id: 'DIE-2', role: 'die' })],
    });
    const broken = whatIf(outlookOf(facts), [{ kind: 'lose-tool', toolId: 'DIE-2' }]);
    if (!broken.ok) throw new Error(broken.refusal.sentence);
    expect(broken.value.plan.lines[0]?.endsToMake).toBe(13);
    expect(broken.value.sizes().map(({ connectionId }) => connectionId)).toEqual(['3-8-medium']);
    const none = whatIf(outlookOf(facts), [
      { kind: 'lose-tool', toolId: 'DIE-2' },
      { kind: 'lose-tool', toolId: 'DIE-1' },
    ]);
    const [left] = none.ok ? none.value.lines : [];
    expect(left?.verdict).toBe('cannot-make-now');
    expect(left?.blockers.map(({ kind, role }) => [kind, role])).toEqual([['missing', 'die']]);
    expect(left?.clearsOnDay).toMatch(/^2026-0[34]/);
  });

  it('Q3: dies slipped three weeks: both jobs shown, the safe counts, the split and the later start', () => {
    const [job41, both] = ours({ mean: 1200, used: 600 }, [
      turns(30, 506 / 30),
      { ...turns(40, 9), startOnDay: '2026-03-20', dueOnDay: '2026-03-24' },
    ]);
    expect(workedP({ mean: 1200, used: 600, need: 506 })).toBeCloseTo(0.63, 2);
    expect(workedP({ mean: 1200, used: 600, need: 866 })).toBeCloseTo(0.24, 2);
    expect([job41?.verdict, both?.verdict, job41?.safeEnds]).toEqual(['at-risk', 'cannot-make-now', 12]);
    const facts = whatIfFacts({
      lines: [lineFacts({ ends: 60, startOnDay: '2026-04-20', dueOnDay: '2026-04-24' })],
    });
    const base = outlookOf(facts);
    const slipped = whatIf(base, [{ kind: 'slip-order', orderId: 'PO-1', days: 21 }]);
    if (!slipped.ok) throw new Error(slipped.refusal.sentence);
    expect(slipped.value.lines[0]?.pMade).toBeLessThan(base.lines[0]?.pMade ?? 0);
    expect(movedLines(base.lines, slipped.value.lines).unmoved).toBe(0);
    const split = splitWay(asked(facts));
    expect(split?.actions[0]).toMatchObject({ kind: 'split', endsNow: base.lines[0]?.safeEnds });
  });

  it('Q5: two lines want the only die: one holder, the hand-over day named, a twin settles it', () => {
    const facts = whatIfFacts({
      edges: whatIfFacts().edges.map((edge) => ({ ...edge, use: [], lastUse: null })),
      lines: [lineFacts({ ends: 2 }), second({ ends: 2, startOnDay: '2026-03-11', dueOnDay: '2026-03-14' })],
    });
    const { verdict } = asked(facts, 1);
    const die = verdict.blockers.find(({ role }) => role === 'die');
    expect(die).toMatchObject({
      kind: 'held-elsewhere',
      lineId: 'J-1.1',
      untilDay: '2026-03-13',
      clearsOnDay: '2026-03-14',
    });
    const way = laterStartWay(asked(facts, 1));
    expect(way?.actions[0]).toMatchObject({ kind: 'start', startOnDay: '2026-03-14' });
    // Everything of that size is out with the first line, so a die alone does not set the second going.
    expect(verdict.blockers.length).toBeGreaterThan(5);
    const [one, two] = ours(
      { mean: 1e6, used: 0 },
      [turns(4, 10), { ...turns(4, 10), startOnDay: '2026-03-10' }],
      [
        ...completeSet(),
        ...completeSet()
          .filter(({ role }) => role !== 'die')
          .map((item) => ({ ...item, toolId: `${item.toolId}-2` })),
      ],
    );
    expect([one?.verdict, two?.verdict]).toEqual(['can-make', 'cannot-make-now']);
    expect(two?.blockers.map(({ role }) => role)).toEqual(['die']);
  });

  it('Q13: a ring due tomorrow and three days of work: it can be cut, not accepted; the twin in date settles it', () => {
    const tools = whatIfFacts().tools.map((tool) =>
      tool.role === 'go-ring' ? { ...tool, dueOnDay: '2026-03-03' } : tool,
    );
    const line = lineFacts({ ends: 4, startOnDay: '2026-03-02', dueOnDay: '2026-03-04' });
    const { verdict, ...rest } = asked(whatIfFacts({ tools, lines: [line] }));
    expect(verdict).toMatchObject({ verdict: 'cannot-make-now', canCut: true, canAccept: false });
    expect(verdict.blockers[0]).toMatchObject({
      kind: 'calibration-lapses',
      role: 'go-ring',
      dueOnDay: '2026-03-03',
    });
    expect(mendWay({ verdict, ...rest })?.actions).toEqual([{ kind: 'calibrate', toolId: 'GO-RING-1' }]);
    const twin = toolFacts({ id: 'GO-RING-2', role: 'go-ring', dueOnDay: '2026-12-01' });
    expect(asked(whatIfFacts({ tools: [...tools, twin], lines: [line] })).verdict.canAccept).toBe(true);
  });

  it('Q14: a size that the shop has nothing for: everything that is missing, the longest lead sets the day, nothing invented', () => {
    const base = whatIfFacts();
    const parts = base.parts
      .filter(({ role }) => role !== 'go-ring')
      .map((part) => ({
        ...part,
        id: `${part.id}-1`,
        fitsConnectionIds: part.fitsConnectionIds.length === 0 ? [] : ['1-high'],
        leadTimeDays: part.role === 'die' ? 56 : 14,
      }));
    const facts = whatIfFacts({
      parts: [...base.parts, ...parts],
      lines: [lineFacts({ connectionId: '1-high', ends: 12 })],
    });
    const question = asked(facts);
    const { verdict } = question;
    expect(verdict).toMatchObject({ verdict: 'cannot-make-now', pMade: 0, safeEnds: null });
    expect(verdict.blockers[0]?.kind).toBe('unknown-connection');
    const missing = verdict.blockers.flatMap(({ kind, role }) => (kind === 'missing' && role ? [role] : []));
    expect(missing).toEqual(
      expect.arrayContaining(['die', 'threading-guide', 'go-ring', 'not-go-ring', 'blade', 'coning-guide']),
    );
    const way = buyWay(question, missing);
    const days = (way?.actions ?? []).flatMap((action) =>
      action.kind === 'order' ? [action.thereOnDay ?? ''] : [],
    );
    const die = way?.actions.find((action) => action.kind === 'order' && action.part.role === 'die');
    expect(die?.kind === 'order' && die.thereOnDay).toBe(days.sort().at(-1));
    expect(way?.changes.at(-1)).toMatchObject({ kind: 'change-dates', startOnDay: days.at(-1) });
    expect(way?.actions).toContainEqual({ kind: 'find-part', role: 'go-ring' });
    expect([way?.costMinor, way?.verdict]).toEqual([null, 'cannot-make-now']);
  });

  it('Q29: a job is cancelled: who waited for its tools goes on, and the wear that it caused stays', () => {
    const facts = whatIfFacts({
      lines: [lineFacts({ ends: 4 }), second({ startOnDay: '2026-03-11', dueOnDay: '2026-03-14' })],
      tools: whatIfFacts().tools.map((tool) =>
        tool.id === 'DIE-1' ? { ...tool, state: 'issued' as const, jobLineId: 'J-1.1' } : tool,
      ),
    });
    const base = outlookOf(facts);
    const dropped = whatIf(base, [{ kind: 'drop-line', lineId: 'J-1.1' }]);
    if (!dropped.ok) throw new Error(dropped.refusal.sentence);
    const { answers } = movedLines(base.lines, dropped.value.lines);
    expect(answers.map(({ lineId, before, after }) => [lineId, before?.canCut, after?.canCut])).toEqual([
      ['J-2.1', false, true],
      ['J-1.1', true, undefined],
    ]);
    expect(dropped.value.plan.draws.residualLife('DIE-1')).toBe(base.ensemble.residualLife('DIE-1'));
  });

  it('Q37: a brand-new shop: an answer on the first day, wide, and labelled as a default with none of its own dies', () => {
    const fresh = whatIfFacts().edges.map((edge) => ({ ...edge, use: [], lastUse: null }));
    const outlook = outlookOf(whatIfFacts({ edges: fresh }));
    expect(outlook.lines[0]?.safeEnds).toBeGreaterThanOrEqual(0);
    const forecast = outlook.forecast('DIE-1', { connectionId: '3-8-medium', materialId: '316-cw' });
    if (forecast === undefined) throw new Error('a new die has a forecast');
    expect(reasonSentence(forecast.reasons, '316 cold-worked')).toContain('0 of your dies');
    expect(forecast.highEnds / Math.max(1, forecast.lowEnds)).toBeGreaterThan(4);
  });

  it('Q40: a spool that cannot be remade: 0.95 of one die, or a new die and a practice end', () => {
    const spool = { ...turns(4, 10.5), requiredProbability: 0.95, cannotBeRemade: true };
    const worked = workedP({ mean: 1300, used: 1100, need: 42 });
    expect(worked).toBeLessThan(0.95);
    const [used] = ours({ mean: 1300, used: 1100 }, [spool]);
    expect(used?.verdict).toBe('at-risk');
    expect(Math.abs((used?.valuePolicy?.[1]?.surest?.pFinishes ?? 0) - worked)).toBeLessThan(0.001);
    const withNew = [...completeSet(), setItem('die', { toolId: 'NEW', isUnused: true })];
    const [fresh] = ours({ mean: 1300, used: 1100 }, [spool], withNew);
    expect(fresh?.verdict).toBe('can-make');
    expect(fresh?.valuePolicy?.[1]?.newToolIds).toEqual(['NEW']);
    expect(workedP({ mean: 1300, used: 400, need: 42 })).toBeGreaterThan(0.95);
    const [young] = ours({ mean: 1300, used: 400 }, [spool]);
    expect(young?.verdict).toBe('can-make');
  });
});
