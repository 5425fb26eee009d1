import { describe, expect, it } from 'vitest';
import { edgeHistories, isEdgeKind, isUnknownStart, partSizes } from '@/lib/outlook/edge-histories';
import type { EdgeFacts, ToolFacts } from '@/lib/outlook/shop-facts';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { edgeFacts, use } from '../../support/edge-facts';
import { setParts, shopRecord, toolFacts } from '../../support/shop-record';

const die = toolFacts({ id: 'D-1', role: 'die' });
const blade = toolFacts({ id: 'B-1', role: 'blade' });

function historiesOf(edges: readonly EdgeFacts[], tools: readonly ToolFacts[] = [die, blade]) {
  return edgeHistories(shopRecord({ tools, edges }));
}

/** The one history of one edge of the die. */
function historyOf(edge: Partial<EdgeFacts>) {
  const [history] = historiesOf([edgeFacts('D-1', edge)]);
  if (history === undefined) throw new Error('no history');
  return history;
}

const bases = (parts: readonly { base: number }[]) => parts.map(({ base }) => base);

// source: hand. 10.5 turns an end; 40 ends on the edge, 12 of them in the last row.
describe('an edge found worn', () => {
  const worn = (goodEnds: number) => {
    const last = use(12, { goodEnds });
    return historyOf({ end: 'worn', lastUse: last, use: [use(40)] });
  };

  it('wore out within the ends of its last row that were not good', () => {
    const history = worn(9);
    expect(bases(history.during)).toEqual([3 * 10.5]);
    expect(bases(history.before)).toEqual([37 * 10.5]);
    expect(history.end).toBe('worn');
  });

  it('wore out at the last end of its last row where all were good', () => {
    const history = worn(12);
    expect(bases(history.during)).toEqual([10.5]);
    expect(bases(history.before)).toEqual([39 * 10.5]);
  });

  it('wore out anywhere in its last row where none was good', () => {
    const history = worn(0);
    expect(bases(history.during)).toEqual([12 * 10.5]);
    expect(bases(history.before)).toEqual([28 * 10.5]);
  });

  it('never counts an end twice: before and during add up to all that it cut', () => {
    for (let good = 0; good <= 12; good++) {
      const { before, during } = worn(good);
      const total = [...before, ...during].reduce((sum, { base }) => sum + base, 0);
      expect(total, `${good} good`).toBeCloseTo(40 * 10.5, 9);
    }
  });

  it('in its first row, with nothing good, has survived nothing for certain', () => {
    const last = use(12, { goodEnds: 0 });
    const history = historyOf({ end: 'worn', lastUse: last, use: [last] });
    expect(bases(history.before)).toEqual([0]);
    expect(bases(history.during)).toEqual([126]);
  });

  it('takes the doubtful ends out of the very sum that they were counted in', () => {
    const last = use(10, { materialId: '2507', dry: true, goodEnds: 6 });
    const others = [use(30), use(5, { materialId: '2507' }), use(7, { dry: true }), use(2, { rework: true })];
    const history = historyOf({ end: 'worn', lastUse: last, use: [...others, last] });
    expect(history.during).toEqual([{ materialId: '2507', dry: true, rework: false, base: 42 }]);
    expect(bases(history.before)).toEqual([315, 52.5, 73.5, 21, 63]);
  });

  it('of which no row was logged wore out at what it had cut before it came', () => {
    const history = historyOf({ end: 'worn', use: [use(60)] });
    expect(bases(history.before)).toEqual([630]);
    expect(history.during).toEqual([]);
  });
});

// source: hand. An edge that did not wear out is known to have lasted for all that it cut, and no more.
describe('an edge that did not wear out', () => {
  it.each([
    ['incident', 'incident'],
    ['removed-working', 'removed-working'],
    [null, 'in-service'],
  ] as const)('ended %s: counts as %s at all that it cut', (end, expected) => {
    const history = historyOf({ end, lastUse: use(12, { goodEnds: 4 }), use: [use(40)] });
    expect(history).toMatchObject({ end: expected, during: [] });
    expect(bases(history.before)).toEqual([420]);
  });
});

// source: hand. What is known of an edge depends on where its count began.
describe('the start of an edge', () => {
  const used = (opening: ToolFacts['opening']) => ({ ...blade, opening });
  const edges = [edgeFacts('B-1', { end: 'removed-working' }), edgeFacts('B-1', { edgeNo: 2 })];

  it('unknown: its first edge says nothing, those after a regrind do', () => {
    const known = historiesOf(edges, [used({ known: 'unknown' })]);
    expect(known.map(({ edgeNo, regrinds }) => [edgeNo, regrinds])).toEqual([[2, 1]]);
  });

  it('new or counted: every edge says something', () => {
    const counted = {
      known: 'counted',
      connectionId: '3-8-medium',
      materialId: '316-cw',
      ends: 20,
      exposureMicro: 1,
    } as const;
    for (const opening of [{ known: 'new' }, counted] as const)
      expect(historiesOf(edges, [used(opening)]).map(({ regrinds }) => regrinds)).toEqual([0, 1]);
  });

  it('is unknown for the first edge of a tool that came used, only', () => {
    expect(isUnknownStart({ opening: { known: 'unknown' } }, { edgeNo: 1 })).toBe(true);
    expect(isUnknownStart({ opening: { known: 'unknown' } }, { edgeNo: 2 })).toBe(false);
    expect(isUnknownStart({ opening: { known: 'new' } }, { edgeNo: 1 })).toBe(false);
  });
});

// source: hand. 3/8 is 0.375 in; the other cases are stated.
describe('which edges are evidence', () => {
  it('carries tool, edge, kind, part and tube size along', () => {
    expect(historyOf({})).toMatchObject({
      toolId: 'D-1',
      edgeNo: 1,
      kind: 'die',
      partId: 'die-3-8',
      odIn: 0.375,
    });
  });

  it('leaves out what has no tool, no part, no size or no edge that wears', () => {
    const edges = ['D-1', 'X-1', 'D-2', 'G-1'].map((toolId) => edgeFacts(toolId));
    const tools = [die, { ...die, id: 'D-2', partId: 'gone' }, toolFacts({ id: 'G-1', role: 'go-ring' })];
    expect(historiesOf(edges, tools).map(({ toolId }) => toolId)).toEqual(['D-1']);
  });

  it('knows the two kinds with an edge', () => {
    expect(['blade', 'die', 'go-ring', 'fluid'].map((role) => isEdgeKind(role as 'die'))).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  it('gives each part with an edge the smallest size it fits, and none to a part that fits nothing', () => {
    const parts = setParts().map((part) =>
      part.role === 'die'
        ? { ...part, fitsConnectionIds: ['9-16-high', '3-8-medium', 'gone'] }
        : part.role === 'blade'
          ? { ...part, fitsConnectionIds: ['gone'] }
          : part,
    );
    const sizes = partSizes({ parts, connections: SHIPPED_CONNECTIONS });
    expect([...sizes]).toEqual([['die-3-8', 0.375]]);
  });
});

// source: hand. 30 ends counted when it was entered, 315 turns: given, unless the edge had ended by then.
describe('an edge that was entered with a count', () => {
  const exposureMicro = 30 * 10_500_000;
  const opening = {
    known: 'counted',
    connectionId: '3-8-medium',
    materialId: '316-cw',
    ends: 30,
    exposureMicro,
  } as const;
  const entered = (edge: Partial<EdgeFacts>) =>
    historiesOf([edgeFacts('D-1', edge)], [toolFacts({ id: 'D-1', role: 'die', opening })])[0]?.entered;

  it('is known to have lasted so long because it is there', () => {
    expect(bases(entered({ use: [use(40)], lastUse: use(10) }) ?? [])).toEqual([30 * 10.5]);
    expect(bases(entered({ use: [use(40)], lastUse: use(10), end: 'worn' }) ?? [])).toEqual([30 * 10.5]);
  });

  it('is a finished life where it never cut here, and on its second edge nothing is given', () => {
    expect(entered({ use: [use(30)], lastUse: null, end: 'worn' })).toBeUndefined();
    expect(entered({ edgeNo: 2, use: [use(4)], lastUse: use(4) })).toBeUndefined();
  });
});
