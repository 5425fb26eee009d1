import { describe, expect, it } from 'vitest';
import { entryWords, type Names } from '@/app/_shared/words/entry-words';
import { ENTRY_LABEL } from '@/lib/ledger/entry-label';

const names: Names = {
  person: (id) => ({ ash: 'Ash Moor' })[id] ?? id,
  connection: (id) => ({ '9-16-high': '9⁄16 high pressure' })[id] ?? id,
  material: (id) => ({ '316': '316/316L' })[id] ?? id,
};
const words = (kind: string, payload: object) =>
  entryWords({ kind, payload: payload as Record<string, unknown> }, names);

const cut = { operation: 'thread', connectionId: '9-16-high', materialId: '316', ends: 24, goodEnds: 24 };

// source: hand. Each sentence says in shop words what its entry holds, and nothing that it does not hold.
describe('entryWords', () => {
  it.each([
    [cut, '24 threads, 9⁄16 high pressure in 316/316L'],
    [{ ...cut, operation: 'cone', ends: 1, goodEnds: 1 }, '1 cone, 9⁄16 high pressure in 316/316L'],
    [{ ...cut, goodEnds: 21 }, '24 threads, 9⁄16 high pressure in 316/316L (3 not good)'],
    [
      { ...cut, threadLengthTyped: '15/16 in', dry: true, rework: true, heat: 'H1', jobLineId: 'J-086.2' },
      '24 threads, 9⁄16 high pressure in 316/316L (15/16 in long, cut dry, recut, heat H1, job J-086.2)',
    ],
    [{ ...cut, connectionId: '1-high', materialId: 'tin' }, '24 threads, 1-high in tin'],
  ])('a row of the cut log: %j', (payload, text) => {
    expect(words('cut-logged', payload)).toBe(text);
  });

  it.each([
    ['tool-received', { role: 'die', lot: '', opening: { known: 'new' } }, 'received: threading die'],
    [
      'tool-received',
      { role: 'blade', lot: 'L7', opening: { known: 'unknown' } },
      'received: coning blade, lot L7, use before this unknown',
    ],
    [
      'tool-received',
      { role: 'die', opening: { known: 'counted', ends: 40 } },
      'received: threading die, 40 ends cut before',
    ],
    [
      'tool-issued',
      { toPersonId: 'ash', jobLineId: 'J-086.2', bench: '4' },
      'issued to Ash Moor for job J-086.2, bench 4',
    ],
    ['tool-issued', { toPersonId: 'bo', jobLineId: null, bench: '' }, 'issued to bo on loan'],
    ['stock-counted', { expected: 5, found: 5, variances: [] }, 'stock-take: 5 of 5 found'],
    [
      'stock-counted',
      { connectionId: '9-16-high', edgeKind: 'die', expected: 5, found: 4, variances: [{}] },
      'stock-take of 9⁄16 high pressure dies: 4 of 5 found, 1 difference',
    ],
    [
      'gauge-calibrated',
      { result: 'pass', asFound: 'out', dueOnDay: '2027-03-01', certificate: 'PM-2' },
      'found out of limits, adjusted, set aside, due 1 Mar 2027, certificate PM-2',
    ],
    ['gauge-checked', { result: 'pass', againstToolId: 'SP-56-1' }, 'passed a check in the shop on SP-56-1'],
    ['gauge-checked', { result: 'fail', againstToolId: null }, 'did not pass a check in the shop, set aside'],
    ['gauge-dropped', { onDay: '2026-03-02' }, 'set aside after a knock'],
    [
      'gauge-calibrated',
      { result: 'fail', onDay: '2023-05-04', takesHold: 'by-day', dueOnDay: null },
      'failed its calibration of 4 May 2023',
    ],
    [
      'gauge-calibrated',
      { result: 'pass', asFound: 'in', onDay: '2026-03-02', takesHold: 'by-day', dueOnDay: '2027-03-01' },
      'calibrated on 2 Mar 2026, due 1 Mar 2027',
    ],
    [
      'first-off-checked',
      { result: 'pass', gaugeIds: ['CG-56-1'] },
      'first-off passed the gauges, with CG-56-1',
    ],
    [
      'first-off-checked',
      { result: 'not-gauged', gaugeIds: [] },
      'first-off looked at, not gauged: still owed',
    ],
    [
      'gauge-settings-set',
      { targetReliability: 0.975 },
      'how gauges are judged: 97.5 % still in at the end of their interval',
    ],
    [
      'gauge-interval-set',
      { intervalDays: 274, intervalEnds: 700, method: 'in-use' },
      'calibration interval: 274 days or 700 ends',
    ],
    ['gauge-certificate-filed', { name: 'PM-1.pdf', type: 'application/pdf' }, 'certificate filed: PM-1.pdf'],
    ['tool-returned', { condition: 'ok' }, 'came back in order'],
    ['tool-returned', { condition: 'unsure' }, 'came back, nobody sure of it, set aside'],
    [
      'tool-moved',
      { to: 'regrind', backOnDay: '2026-03-20' },
      'now out for regrind, expected back 20 Mar 2026',
    ],
    ['tool-moved', { to: 'lost', backOnDay: null }, 'now lost'],
    ['edge-ended', { cause: 'dropped' }, 'edge out of service: dropped'],
    ['edge-renewed', {}, 'back from regrind with a new edge, counted from zero'],
    [
      'gauge-calibrated',
      { result: 'pass', dueOnDay: '2027-03-01', certificate: 'C-12' },
      'calibrated, due 1 Mar 2027, certificate C-12',
    ],
    ['gauge-calibrated', { result: 'fail', dueOnDay: null }, 'failed its calibration, set aside'],
    ['fluid-opened', { onDay: '2026-03-02' }, 'opened on 2 Mar 2026'],
    ['fluid-level-read', { levelMl: 400 }, 'level 400 mL'],
    ['fluid-drops-counted', { drops: 100, volumeMl: 2.5 }, 'counted 100 drops in 2.5 mL'],
    [
      'fluid-extended',
      { untilDay: '2026-09-01', inspection: 'clear' },
      'life lengthened to 1 Sep 2026 after inspection: clear',
    ],
    [
      'fluid-disposed',
      { how: 'waste-carrier', volumeMl: 90, transferNote: 'N-7' },
      'to a licensed waste carrier, 90 mL, note N-7',
    ],
    [
      'fluid-lot-set',
      { lot: 'L7', chlorinated: 'unknown', sdsRevision: '' },
      'lot L7: chlorinated unknown, no SDS written down',
    ],
    [
      'line-cleaned',
      { lineNo: 1, onDay: '2026-03-02', procedure: 'CL-4', evidence: 'record 17' },
      'line 1 cleaned on 2 Mar 2026 by CL-4: record 17',
    ],
    [
      'life-guess-set',
      { ends: 150, giveOrTake: 2 },
      'first guess: about 150 ends, give or take a factor of 2',
    ],
    ['connection-set', { id: '9-16-high' }, 'size table row: 9⁄16 high pressure'],
    ['job-set', { id: 'J-1', title: '', lines: [{}] }, 'job planned: J-1, 1 line'],
    ['job-closed', { how: 'cancelled' }, 'job cancelled'],
    ['order-placed', { quantity: 4, expectedOnDay: '2026-03-14' }, 'ordered 4, expected 14 Mar 2026'],
    ['order-slipped', { expectedOnDay: '2026-04-01' }, 'order slipped to 1 Apr 2026'],
    ['order-received', { quantity: 1 }, 'received 1 of the order'],
    ['belief-set', { kind: 'blade' }, 'what is believed of blades before the log'],
    [
      'edge-read',
      { onDay: '2026-03-02', finding: { method: 'flank-land', landMm: 0.18 } },
      'read on 2 Mar 2026: wear land 0.18 mm',
    ],
    [
      'tool-marked',
      { how: 'etched', codeKind: 'data-matrix', readBack: true, onDay: '2026-03-02' },
      'marked again: etched, Data Matrix, read back',
    ],
    [
      'tool-marked',
      { how: 'stamped', codeKind: null, readBack: false, onDay: '2026-03-02' },
      'marked again: stamped, not read back',
    ],
    [
      'edge-read',
      { onDay: '2026-03-02', finding: { method: 'pitch-diameter', pitchDiameterMm: 13.26 } },
      'read on 2 Mar 2026: pitch diameter 13.26 mm',
    ],
    [
      'edge-read',
      { onDay: '2026-03-02', finding: { method: 'ring', go: 'tight', notGoTurns: null } },
      'read on 2 Mar 2026: GO ring runs on tight',
    ],
    [
      'edge-read',
      { onDay: '2026-03-02', finding: { method: 'ring', go: 'free', notGoTurns: 1 } },
      'read on 2 Mar 2026: GO ring runs on freely, NOT GO on by 1 turn',
    ],
    [
      'edge-read',
      { onDay: '2026-03-02', finding: { method: 'grade', grade: 'at-limit' } },
      'read on 2 Mar 2026: at its limit',
    ],
    ['entry-reversed', {}, 'took an entry back'],
  ])('%s %j', (kind, payload, text) => {
    expect(words(kind, payload)).toBe(text);
  });

  // source: identity. What has a name in the ledger has words on the screen: no entry shows its code.
  it('has words for every kind of entry', () => {
    const known = { role: 'die', opening: { known: 'new' }, finding: { method: 'grade', grade: 'fresh' } };
    const anything = { ...known, lines: [], ends: 1, goodEnds: 1, cause: 'worn' };
    for (const kind of Object.keys(ENTRY_LABEL)) expect(words(kind, anything), kind).not.toBe(kind);
  });

  it('shows the code of an entry that it does not know, rather than nothing', () => {
    expect(words('from-a-later-version', {})).toBe('from-a-later-version');
  });
});
