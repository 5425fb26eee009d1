import type { Feature } from '../../lib/shop/calibration';
import type { Act } from './act';
import { type Calendar, monthDay } from './calendar';
import { calibrate, type Deed, move, receive } from './crib-acts';
import { checkPassed, fileLatest, knock, setInterval } from './gauge-acts';
import { A_YEAR_ON, ADJUSTED, errorsOf, FOUND_OUT } from './gauge-errors';
import { SET_UP_OFFSET } from './set-up';

/**
 * A gauge: its ID, its part, how many days from today its calibration runs out, how far apart they lie, and how far
 * apart the certificates lay that were copied from its card.
 */
type Line = readonly [
  id: string,
  partId: string,
  dueOffset: number,
  intervalDays: number,
  cardIntervalDays?: number,
];

const LABORATORY = 'Plumbgate Metrology';
/** Certificates that were copied from the cards on the first day. */
const CARDS = 2;
/** Days from a certificate to the day that its gauge was due before it. */
const EARLY = 3;
/** The day of the interval review. */
const REVIEW_OFFSET = monthDay(3, 0);

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
  ['SP-25-1', 'setting-plug-1-4', REVIEW_OFFSET + 5 + 1095, 1094, 730],
  ['SP-38-1', 'setting-plug-3-8', REVIEW_OFFSET + 5 + 1095, 1094, 730],
  ['SP-56-1', 'setting-plug-9-16', REVIEW_OFFSET + 5 + 1095, 1094, 730],
  ['SP-75-1', 'setting-plug-3-4', REVIEW_OFFSET + 5 + 1095, 1094, 730],
  ['SP-100-1', 'setting-plug-1', REVIEW_OFFSET + 5 + 1095, 1094, 730],
  ['MKR-1', 'micrometer', 61, 365],
  ['MKR-2', 'micrometer', 61, 365],
  ['MKR-3', 'micrometer', 158, 365],
  ['WIR-1', 'thread-wires', 301, 730],
  ['MST-1', 'master-seat', 268, 730],
  ['TQW-1', 'torque-wrench', 102, 365],
  ['TQW-2', 'torque-wrench', 102, 365],
];

const HANDED = /^(go-ring|not-go-ring|setting-plug)-/;

/** Every gauge of the story: received, sent for calibration in time, back with its next date; and what befell some. */
export function gaugeActs(calendar: Calendar): Act[] {
  const lives = LINES.flatMap((line, index) => gaugeLife(line, index, calendar));
  return [
    ...lives,
    ...coneGaugeFoundOut(calendar),
    ...ringDropped(calendar),
    ...ringChecks(calendar),
    ...intervalReview(calendar),
    ...ringsNow(calendar),
  ];
}

function gaugeLife(line: Line, index: number, calendar: Calendar): Act[] {
  const [id, partId, dueOffset, intervalDays, cardDays = intervalDays] = line;
  const dues: number[] = [dueOffset];
  for (let due = dueOffset - intervalDays; due > SET_UP_OFFSET + 40; due -= intervalDays) dues.unshift(due);
  const [firstDue = dueOffset] = dues;
  const cardIntervalDays = Math.max(cardDays, firstDue - SET_UP_OFFSET + 20);
  const errors = errorsOf(id, partId, CARDS + dues.length);
  const acts = [receiveGauge(id, partId, firstDue, calendar, index)];
  for (let card = 0; card < CARDS; card++) {
    const dueAfter = firstDue - (CARDS - 1 - card) * cardIntervalDays;
    const onDay = calendar.day(dueAfter - cardIntervalDays);
    const deed = {
      ...quality(calendar, SET_UP_OFFSET, 700 + index * 2 + card),
      toolId: id,
      mark: `card ${card}`,
    };
    const reason = 'Copied from its card.';
    acts.push(
      calibrate(
        { ...deed, reason },
        passed(onDay, calendar.day(dueAfter), `PM-${index + 1}-C${card + 1}`, errors[card]),
      ),
    );
  }
  dues.slice(0, -1).forEach((due, at) => {
    const out = { ...quality(calendar, due - 11, 560 + index), toolId: id, mark: due };
    const back = { ...out, atMs: calendar.at(due - 2, 700 + index) };
    const next = calendar.day(dues[at + 1] ?? dueOffset);
    const certificate = passed(
      calendar.day(due - EARLY),
      next,
      `PM-${index + 1}-${at + 1}`,
      errors[CARDS + at],
    );
    acts.push(
      move({ ...out, reason: `To ${LABORATORY}.` }, { to: 'calibration', backOnDay: calendar.day(due - 2) }),
      calibrate(back, certificate),
    );
  });
  return acts;
}

function quality(calendar: Calendar, offset: number, minutes: number): Pick<Deed, 'atMs' | 'by'> {
  return { atMs: calendar.at(offset, minutes), by: 'quality-1' };
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

/** A certificate that found the gauge in and left it as it was. */
function passed(onDay: string, dueOnDay: string, certificate: string, error?: Feature) {
  const features = error === undefined ? [] : [error];
  const found = {
    asFound: 'in',
    adjusted: false,
    rule: 'guarded-95',
    laboratory: LABORATORY,
    features,
  } as const;
  return { onDay, result: 'pass' as const, dueOnDay, certificate, ...found };
}

/** Month 13: the 3/8 cone gauge was found out of limits, and went to the lab before it came back. Checked monthly since. */
function coneGaugeFoundOut(calendar: Calendar): Act[] {
  const id = 'CG-38-1';
  const day = (offset: number) => calendar.day(offset);
  const deed = (offset: number, mark: string) => ({ ...quality(calendar, offset, 640), toolId: id, mark });
  const found = monthDay(13, 10);
  const due = monthDay(13, 14);
  const seen = { laboratory: LABORATORY, asFound: 'out', rule: 'guarded-95' } as const;
  const failed = {
    ...{ onDay: day(found), result: 'fail' as const, dueOnDay: null, certificate: 'PM-38-F' },
    ...{ ...seen, adjusted: false, features: [FOUND_OUT] },
  };
  const card = { ...FOUND_OUT, asFoundError: 3.1, asLeftError: 3.1 };
  const toLab = `To ${LABORATORY} for adjustment.`;
  const checks = Array.from({ length: 11 }, (_, i) => found + 45 + 30 * i).filter((offset) => offset < -40);
  return [
    receiveGauge(id, 'cone-gauge-3-8-medium', due, calendar, 50),
    calibrate(
      { ...quality(calendar, SET_UP_OFFSET, 800), toolId: id, mark: 'card', reason: 'Copied from its card.' },
      passed(day(due - 365), day(due), 'PM-38-C', card),
    ),
    calibrate(
      { ...deed(found, 'found'), reason: 'As found: out at the mouth. Ends since the last check set aside.' },
      failed,
    ),
    move({ ...deed(found + 2, 'out'), reason: toLab }, { to: 'calibration', backOnDay: day(found + 15) }),
    calibrate(deed(found + 15, 'back'), {
      ...passed(day(found + 14), day(-20), 'PM-38-2', { ...ADJUSTED, asFoundError: null }),
      adjusted: true,
    }),
    ...checks.map((offset) => checkPassed(deed(offset, `month ${offset}`), 'MST-1', day(offset))),
    move({ ...deed(-31, 'again'), reason: `To ${LABORATORY}.` }, { to: 'calibration', backOnDay: day(-22) }),
    calibrate(deed(-22, 'again'), passed(day(-23), day(310), 'PM-38-3', A_YEAR_ON)),
  ];
}

/** Month 5: a ring was dropped, said so at once, and passed on its setting plug. */
function ringDropped(calendar: Calendar): Act[] {
  const offset = monthDay(5, 20);
  const toolId = 'G-56-GO-1';
  const dropped = { atMs: calendar.at(offset, 610), by: 'tech-3' as const, toolId };
  const reason = 'After a knock at the bench: drag as before, GO full length, NOT GO as before.';
  return [
    knock({ ...dropped, reason: 'Fell off the bench, reported at once.' }, calendar.day(offset)),
    checkPassed(
      { ...quality(calendar, offset + 1, 560), toolId, mark: 'after the knock', reason },
      'SP-56-1',
      calendar.day(offset + 1),
    ),
  ];
}

/** The GO rings of the sizes that are cut most, on their setting plugs, every quarter. */
function ringChecks(calendar: Calendar): Act[] {
  const pairs = [
    ['G-25-GO-1', 'SP-25-1'],
    ['G-38-GO-1', 'SP-38-1'],
    ['G-56-GO-1', 'SP-56-1'],
  ] as const;
  return pairs.flatMap(([toolId, plug], which) =>
    [17, 14, 11, 8, 6, 2].map((month) => {
      const offset = monthDay(month, 3 + which);
      const deed = { ...quality(calendar, offset, 545 + which), toolId, mark: `quarter ${month}` };
      return checkPassed(deed, plug, calendar.day(offset));
    }),
  );
}

/**
 * Month 3, the interval review: the plugs hardly move, so from their next certificate on they are good for three years;
 * the busy 3/8 ring wears by its ends, so nine months or 700 ends.
 */
function intervalReview(calendar: Calendar): Act[] {
  const plugs = ['SP-25-1', 'SP-38-1', 'SP-56-1', 'SP-75-1', 'SP-100-1'];
  const deed = (toolId: string, reason: string, minutes: number) => ({
    ...{ ...quality(calendar, REVIEW_OFFSET - 12, minutes), toolId, reason, mark: 'review' },
  });
  const still = 'Interval review: found well in at every calibration, hardly moved. 24 to 36 months.';
  const busy =
    'Interval review: it wears by the end, and it takes most of them. 12 months to 9, or 700 ends.';
  return [
    ...plugs.map((id, at) =>
      setInterval(deed(id, still, 600 + at), {
        intervalDays: 1100,
        intervalEnds: null,
        method: 'statistics',
      }),
    ),
    setInterval(deed('G-38-GO-1', busy, 630), { intervalDays: 274, intervalEnds: 700, method: 'in-use' }),
    fileLatest(
      { ...quality(calendar, REVIEW_OFFSET - 12, 640), toolId: 'G-38-GO-1' },
      'PM-4-2.pdf',
      'Plumbgate Metrology (invented). Certificate PM-4-2. Example for the demo shop.',
    ),
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
