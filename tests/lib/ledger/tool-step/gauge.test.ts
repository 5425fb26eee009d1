import { expect, it } from 'vitest';
import {
  gaugeCalibrated,
  gaugeCertificateFiled,
  gaugeChecked,
  gaugeDropped,
  gaugeIntervalSet,
} from '@/lib/ledger/tool-step/gauge';
import { must, sentence } from '../../../support/db';
import { entry, ISSUE, move, toolAfter } from '../../../support/entry';

const passed = { onDay: '2026-03-02', result: 'pass', dueOnDay: '2027-03-01', certificate: '' } as const;
const calibrated = entry('gauge-calibrated', 'T-1', passed);

it('passed: due on the new day; back from calibration it is in the crib, elsewhere it stays', () => {
  const states = [toolAfter('go-ring', move('calibration')), toolAfter('go-ring', ISSUE)].map((tool) => {
    const { state, dueOnDay } = must(gaugeCalibrated(tool, passed, calibrated));
    return [state, dueOnDay];
  });
  expect(states).toEqual([
    ['in-crib', '2027-03-01'],
    ['issued', '2027-03-01'],
  ]);
});

it('failed: quarantined, and due never', () => {
  const failed = { ...passed, result: 'fail', dueOnDay: null } as const;
  expect(must(gaugeCalibrated(toolAfter('go-ring'), failed, calibrated))).toMatchObject({
    ...{ state: 'quarantined', dueOnDay: null },
  });
});

it('what is not a gauge is not calibrated', () => {
  expect(sentence(gaugeCalibrated(toolAfter('brush'), passed, calibrated))).toBe(
    'T-1 is not kept under calibration.',
  );
});

const check = { onDay: '2026-03-02', result: 'pass', againstToolId: 'SP-56-1', qualifies: true } as const;
const checked = (over = {}) => entry('gauge-checked', 'T-1', { ...check, ...over }, { id: 'entry-checked' });
const dropped = entry('gauge-dropped', 'T-1', { onDay: '2026-03-02' });
const calibratedAs = (over = {}) => entry('gauge-calibrated', 'T-1', { ...passed, ...over });

it('what an old entry does not state stays unknown: no word on how it was found', () => {
  const { evidence } = toolAfter('go-ring', calibrated);
  expect(evidence).toMatchObject([
    { kind: 'calibration', asFound: 'not-taken', asLeft: 'in', qualifies: true },
  ]);
  const failed = toolAfter('go-ring', calibratedAs({ result: 'fail', dueOnDay: null }));
  expect(failed.evidence).toMatchObject([{ asFound: 'out', asLeft: 'out' }]);
});

it('found out of limits it is set aside, though it was adjusted and passed', () => {
  const tool = toolAfter('go-ring', ISSUE, calibratedAs({ asFound: 'out', adjusted: true }));
  expect(tool).toMatchObject({ state: 'quarantined', dueOnDay: '2027-03-01', holderId: null });
  expect(tool.evidence.at(-1)).toMatchObject({ asFound: 'out', asLeft: 'in' });
});

it('dropped: set aside at once, whoever holds it; a check that passes brings it back, with the record', () => {
  const aside = toolAfter('go-ring', ISSUE, dropped);
  expect(aside).toMatchObject({ state: 'quarantined', holderId: null, dropped: { onDay: '2026-03-02' } });
  const back = toolAfter('go-ring', ISSUE, dropped, checked());
  expect(back).toMatchObject({ state: 'in-crib', dropped: null });
  expect(back.evidence).toMatchObject([{ kind: 'interim', asFound: 'in', againstToolId: 'SP-56-1' }]);
});

it('a check that does not count brings nothing back, one that fails sets aside', () => {
  expect(toolAfter('go-ring', dropped, checked({ qualifies: false })).state).toBe('quarantined');
  expect(toolAfter('go-ring', checked({ result: 'fail' }))).toMatchObject({
    state: 'quarantined',
    evidence: [{ asFound: 'out', asLeft: 'out' }],
  });
});

it('no check in the shop overrules a failed calibration', () => {
  const failed = calibratedAs({ result: 'fail', dueOnDay: null });
  expect(toolAfter('go-ring', failed, checked()).state).toBe('quarantined');
});

it('a calibration that finds it good clears the knock', () => {
  const tool = toolAfter('go-ring', dropped, calibratedAs({ asFound: 'in' }));
  expect(tool).toMatchObject({ state: 'in-crib', dropped: null });
});

// source: hand. Calibrated on 2 March 2026 and due 1 March 2027; 200 days after 2 March 2026 is 18 September 2026.
it('a shorter interval moves the due day up, a longer one does not move it', () => {
  const set = (intervalDays: number) =>
    entry('gauge-interval-set', 'T-1', { intervalDays, intervalEnds: null, method: 'shorter' });
  expect(toolAfter('go-ring', calibrated, set(200)).dueOnDay).toBe('2026-09-18');
  expect(toolAfter('go-ring', calibrated, set(700)).dueOnDay).toBe('2027-03-01');
  expect(toolAfter('go-ring', set(200))).toMatchObject({ dueOnDay: null, interval: { intervalDays: 200 } });
});

it('no calibration is good for longer than the interval, which is set first', () => {
  const interval = { intervalDays: 300, intervalEnds: 500, method: 'in-use' } as const;
  const tool = toolAfter('go-ring', entry('gauge-interval-set', 'T-1', interval));
  expect(sentence(gaugeCalibrated(tool, passed, calibrated))).toBe(
    'Its interval is 300 days, so it is due by 2026-12-27. A longer one is set first, with a name and a reason.',
  );
  expect(must(gaugeCalibrated(tool, { ...passed, dueOnDay: '2026-12-27' }, calibrated)).dueOnDay).toBe(
    '2026-12-27',
  );
});

it('a certificate is filed with the calibration it belongs to', () => {
  const file = { sha256: 'a'.repeat(64), name: 'PM-1.pdf', type: 'application/pdf', sizeBytes: 9 } as const;
  const tool = toolAfter('go-ring', calibrated);
  const filed = must(gaugeCertificateFiled(tool, { calibrationId: 'entry-under-test', ...file }, calibrated));
  expect(filed.evidence[0]?.file).toEqual(file);
  expect(sentence(gaugeCertificateFiled(tool, { calibrationId: 'entry-other', ...file }, calibrated))).toBe(
    'T-1 has no such calibration to file it with.',
  );
});

it('refuses what cannot be', () => {
  const lost = toolAfter('go-ring', move('lost'));
  const aside = toolAfter('go-ring', dropped);
  expect([
    sentence(gaugeChecked(toolAfter('brush'), check, calibrated)),
    sentence(gaugeChecked(lost, check, calibrated)),
    sentence(gaugeChecked(toolAfter('go-ring'), { ...check, againstToolId: 'T-1' }, calibrated)),
    sentence(gaugeDropped(aside, { onDay: '2026-03-02' }, dropped)),
    sentence(gaugeDropped(lost, { onDay: '2026-03-02' }, dropped)),
    sentence(
      gaugeIntervalSet(toolAfter('die'), { intervalDays: 9, intervalEnds: null, method: 'shorter' }, dropped),
    ),
  ]).toEqual([
    'T-1 is not kept under calibration.',
    'T-1 is lost; it cannot have been checked.',
    'A gauge cannot be checked on itself.',
    'T-1 is set aside already.',
    'T-1 is lost; it cannot be set aside.',
    'T-1 is not kept under calibration.',
  ]);
});
