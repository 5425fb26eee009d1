import { expect, it } from 'vitest';
import { gaugeCalibrated } from '@/lib/ledger/tool-step/gauge';
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
