import type { Act } from './act';
import { type Calendar, monthDay } from './calendar';
import { calibrate, move, receive } from './crib-acts';
import { SET_UP_OFFSET } from './set-up';

/** A gauge: its ID, its part, how many days from today its calibration runs out, and how far apart they lie. */
type Line = readonly [id: string, partId: string, dueOffset: number, intervalDays: number];

/** The 1/4 GO ring is due in six days; its twin is out for calibration, back in four. */
const LINES: readonly Line[] = [
  ['G-25-GO-1', 'go-ring-1-4', 6, 300],
  ['G-25-GO-2', 'go-ring-1-4', 2, 300],
  ['G-25-NG-1', 'not-go-ring-1-4', 121, 300],
  ['G-38-GO-1', 'go-ring-3-8', 96, 300],
  ['G-38-GO-2', 'go-ring-3-8', 188, 300],
  ['G-38-NG-1', 'not-go-ring-3-8', 96, 300],
  ['G-38-NG-2', 'not-go-ring-3-8', 188, 300],
  ['G-56-GO-1', 'go-ring-9-16', 150, 300],
  ['G-56-NG-1', 'not-go-ring-9-16', 150, 300],
  ['G-75-GO-1', 'go-ring-3-4', 203, 365],
  ['G-75-NG-1', 'not-go-ring-3-4', 203, 365],
  ['G-100-GO-1', 'go-ring-1', 219, 365],
  ['G-100-NG-1', 'not-go-ring-1', 219, 365],
  ['CG-25-1', 'cone-gauge-1-4-medium', 74, 365],
  ['CG-25H-1', 'cone-gauge-1-4-high', 74, 365],
  ['CG-56-1', 'cone-gauge-9-16-medium', 167, 365],
  ['CG-56H-1', 'cone-gauge-9-16-high', 167, 365],
  ['CG-75-1', 'cone-gauge-3-4-medium', 231, 365],
  ['CG-100-1', 'cone-gauge-1-medium', 231, 365],
  ['LG-25-1', 'length-gauge-1-4-medium', 88, 365],
  ['LG-25H-1', 'length-gauge-1-4-high', 88, 365],
  ['LG-38-1', 'length-gauge-3-8-medium', 88, 365],
  ['LG-56-1', 'length-gauge-9-16-medium', 139, 365],
  ['LG-56H-1', 'length-gauge-9-16-high', 139, 365],
  ['LG-75-1', 'length-gauge-3-4-medium', 245, 365],
  ['LG-100-1', 'length-gauge-1-medium', 245, 365],
  ['SP-25-1', 'setting-plug-1-4', 420, 1095],
  ['SP-38-1', 'setting-plug-3-8', 420, 1095],
  ['SP-56-1', 'setting-plug-9-16', 434, 1095],
  ['SP-75-1', 'setting-plug-3-4', 434, 1095],
  ['SP-100-1', 'setting-plug-1', 434, 1095],
  ['MKR-1', 'micrometer', 61, 365],
  ['MKR-2', 'micrometer', 61, 365],
  ['MKR-3', 'micrometer', 158, 365],
  ['TQW-1', 'torque-wrench', 102, 365],
  ['TQW-2', 'torque-wrench', 102, 365],
];

const HANDED = /^(go-ring|not-go-ring|setting-plug)-/;

/** Every gauge of the story: received, sent for calibration in time, back with its next date; and what befell some. */
export function gaugeActs(calendar: Calendar): Act[] {
  const lives = LINES.flatMap((line, index) => gaugeLife(line, index, calendar));
  return [...lives, ...coneGaugeFoundOut(calendar), ...ringDropped(calendar), ...ringsNow(calendar)];
}

function gaugeLife([id, partId, dueOffset, intervalDays]: Line, index: number, calendar: Calendar): Act[] {
  const dues: number[] = [dueOffset];
  for (let due = dueOffset - intervalDays; due > SET_UP_OFFSET + 40; due -= intervalDays) dues.unshift(due);
  const acts = [receiveGauge(id, partId, dues[0] ?? dueOffset, calendar, index)];
  dues.slice(0, -1).forEach((due, at) => {
    const out = { atMs: calendar.at(due - 11, 560 + index), by: 'quality-1' as const, toolId: id, mark: due };
    const back = { ...out, atMs: calendar.at(due - 2, 700 + index) };
    const next = calendar.day(dues[at + 1] ?? dueOffset);
    acts.push(
      move(
        { ...out, reason: 'To Plumbgate Metrology.' },
        { to: 'calibration', backOnDay: calendar.day(due - 2) },
      ),
    );
    acts.push(calibrate(back, passed(calendar.day(due - 3), next, `PM-${index + 1}-${at + 1}`)));
  });
  return acts;
}

function receiveGauge(id: string, partId: string, dueOffset: number, calendar: Calendar, index: number): Act {
  return receive(
    { atMs: calendar.at(SET_UP_OFFSET, 660 + index), by: 'crib-1', toolId: id, reason: 'Opening count.' },
    {
      partId,
      hand: HANDED.test(partId) ? 'LH' : null,
      receivedOnDay: calendar.day(SET_UP_OFFSET),
      dueOnDay: calendar.day(dueOffset),
    },
  );
}

function passed(onDay: string, dueOnDay: string, certificate: string) {
  return { onDay, result: 'pass' as const, dueOnDay, certificate };
}

/** Month 13: the 3/8 cone gauge was found out of limits, and went to the lab before it came back. */
function coneGaugeFoundOut(calendar: Calendar): Act[] {
  const id = 'CG-38-1';
  const day = (offset: number) => calendar.day(offset);
  const deed = (offset: number, mark: string) => ({
    atMs: calendar.at(offset, 640),
    by: 'quality-1' as const,
    toolId: id,
    mark,
  });
  const found = monthDay(13, 10);
  const failed = { onDay: day(found), result: 'fail' as const, dueOnDay: null, certificate: 'PM-38-F' };
  const toLab = 'To Plumbgate Metrology for adjustment.';
  return [
    receiveGauge(id, 'cone-gauge-3-8-medium', monthDay(13, 14), calendar, 50),
    calibrate(
      { ...deed(found, 'found'), reason: 'As found: out at the mouth. Ends since the last check set aside.' },
      failed,
    ),
    move({ ...deed(found + 2, 'out'), reason: toLab }, { to: 'calibration', backOnDay: day(found + 15) }),
    calibrate(deed(found + 15, 'back'), passed(day(found + 14), day(-20), 'PM-38-2')),
    move(
      { ...deed(-31, 'again'), reason: 'To Plumbgate Metrology.' },
      { to: 'calibration', backOnDay: day(-22) },
    ),
    calibrate(deed(-22, 'again'), passed(day(-23), day(310), 'PM-38-3')),
  ];
}

/** Month 5: a ring was dropped, said so at once, and passed on its setting plug. */
function ringDropped(calendar: Calendar): Act[] {
  const dropped = { atMs: calendar.at(monthDay(5, 20), 610), by: 'tech-3' as const, toolId: 'G-56-GO-1' };
  const checked = { ...dropped, atMs: calendar.at(monthDay(5, 21), 560), by: 'quality-1' as const };
  return [
    move({ ...dropped, reason: 'Dropped at the bench, reported at once.' }, { to: 'quarantined' }),
    move({ ...checked, reason: 'Verified on the setting plug: good.' }, { to: 'in-crib' }),
  ];
}

/** Today: the twin of the 1/4 GO ring is at the lab, and a 3/8 NOT GO ring waits for a decision. */
function ringsNow(calendar: Calendar): Act[] {
  const backOnDay = calendar.day(4);
  const twin = { atMs: calendar.at(-8, 600), by: 'quality-1' as const, toolId: 'G-25-GO-2', mark: 'now' };
  const nicked = { atMs: calendar.at(-12, 820), by: 'tech-4' as const, toolId: 'G-38-NG-2', mark: 'now' };
  return [
    move({ ...twin, reason: 'To Plumbgate Metrology.' }, { to: 'calibration', backOnDay }),
    move(
      { ...nicked, reason: 'Nick in the first thread. Waits for a check on the setting plug.' },
      { to: 'quarantined' },
    ),
  ];
}
