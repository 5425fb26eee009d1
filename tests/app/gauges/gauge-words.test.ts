import { expect, it } from 'vitest';
import {
  acceptWord,
  dueWords,
  intervalInForce,
  intervalWords,
  mayAccept,
  monthsWords,
  untilWords,
} from '@/app/gauges/_parts/gauge-words';
import { dueStanding } from '@/lib/gauge/due';

const TODAY = '2026-11-25';
const due = (dueOnDay: string | null, intervalEnds: number | null = null, endsSince = 0) =>
  dueStanding({ dueOnDay, interval: { intervalEnds }, endsSince }, TODAY);

it('says whether it may accept, and the word for it', () => {
  const said = (state: 'in-crib' | 'issued' | 'quarantined' | 'calibration' | 'lost', day: string | null) => [
    mayAccept({ state }, due(day)),
    acceptWord(state, due(day)),
  ];
  expect(said('in-crib', '2027-05-01')).toEqual(['yes', 'in date']);
  expect(said('issued', '2026-11-25')).toEqual(['soon', 'due soon']);
  expect(said('in-crib', '2026-11-24')).toEqual(['no', 'overdue']);
  expect(said('in-crib', null)).toEqual(['no', 'no calibration']);
  expect(said('quarantined', '2027-05-01')).toEqual(['no', 'set aside']);
  expect(said('calibration', '2027-05-01')).toEqual(['no', 'at the laboratory']);
  expect(said('lost', '2027-05-01')).toEqual(['no', 'lost']);
});

it('says when it is due, by day and by ends', () => {
  expect(dueWords('2026-12-01', due('2026-12-01'), TODAY)).toBe('due in 6 days, Tue 1 Dec');
  expect(dueWords('2026-12-01', due('2026-12-01', 500, 499), TODAY)).toBe(
    'due in 6 days, Tue 1 Dec, or after 1 more end',
  );
  expect(dueWords('2027-12-01', due('2027-12-01', 500, 600), TODAY)).toContain('its ends are used up');
  expect(dueWords(null, due(null), TODAY)).toBe('no due day');
});

it('says the interval as set, or as the certificate has it', () => {
  const set = { intervalDays: 274, intervalEnds: 700, method: 'in-use' } as const;
  expect(intervalWords(set)).toBe('274 days or 700 ends');
  expect(intervalWords({ ...set, intervalDays: null })).toBe('700 ends');
  const gauge = { interval: null, calibratedOnDay: '2026-01-01', dueOnDay: '2026-10-28' };
  expect(intervalInForce(gauge)).toBe('300 days by its certificate');
  expect(intervalInForce({ ...gauge, calibratedOnDay: null })).toBe('not set');
});

it('speaks of months for what is long, of days for what is short', () => {
  expect(monthsWords(60)).toBe('60 days');
  expect(monthsWords(365)).toBe('365 days, about 12 months');
  expect(monthsWords(548)).toBe('548 days, about 18 months');
});

it('says until when it carries work', () => {
  expect(untilWords('2026-11-26', TODAY)).toBe('to the end of tomorrow, Thu 26 Nov');
  expect(untilWords('2026-11-24', TODAY)).toContain('since the end of yesterday');
});
