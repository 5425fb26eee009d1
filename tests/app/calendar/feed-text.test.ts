import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { askedKinds } from '@/app/calendar/_parts/asked-kinds';
import { feedText } from '@/app/calendar/_parts/feed-text';
import { DUE_KINDS, type DueDate } from '@/lib/due-dates/due-date';

const long =
  'Zwölf-Kant; "lang", mit \\ und ⁄ und € und sehr vielen weiteren Wörtern, die keine Zeile fasst, ⅜ ⅜ ⅜';
const dues: DueDate[] = [
  {
    id: 'calibration.G-1',
    kind: 'calibration',
    onDay: '2026-12-31',
    toolId: 'G-1',
    role: 'go-ring',
    partName: 'ring',
  },
  {
    ...{
      id: 'replacement.D-38-11',
      kind: 'replacement',
      onDay: '2026-12-09',
      toolId: 'D-38-11',
      role: 'die',
    },
    ...{ partName: long, planned: true, band: { lowDay: '2026-12-01', highDay: '2026-12-12' } },
  },
  { id: 'order-by.die', kind: 'order-by', onDay: '2028-02-28', partId: 'die', partName: 'die', quantity: 2 },
];
const input = {
  ...{ dues, today: '2026-11-25', shop: 'demo', version: 120, versionAtMs: Date.UTC(2026, 10, 25, 8, 30) },
  origin: 'http://shop.local:4170',
};
const text = feedText(input);
const events = () =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));

// source: published. RFC 5545 §3.1: lines end in CRLF, the last one too, and hold at most 75 octets, folded by CRLF and a space; a
// fold never splits a character, so every piece is whole UTF-8.
it('ends and folds its lines as the standard asks', () => {
  expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  const lines = text.split('\r\n').slice(0, -1);
  for (const line of lines) expect(Buffer.byteLength(line, 'utf8'), line).toBeLessThanOrEqual(75);
  expect(lines.some((line) => line.startsWith(' '))).toBe(true);
  expect(text).not.toContain('\ufffd');
});

// source: published. RFC 5545 §3.3.11: backslash, semicolon and comma are escaped in text. Read back by a parser that is not ours.
it('escapes what is written, and is read back as it was', () => {
  const unfolded = text.replaceAll('\r\n ', '');
  expect(unfolded).toContain('Zwölf-Kant\\; "lang"\\, mit \\\\ und');
  expect(events()[1]?.summary).toBe(`Change D-38-11, ${long}`);
  expect(events()[1]?.description).toContain('between Tue 1 Dec and Sat 12 Dec');
});

// source: published. RFC 5545 §3.3.11: a line break in a text is written \\n, so that no name can end its line and begin a
// property of its own; §3.1: a fold counts octets and splits no character, an emoji of four octets or one joined of several
// included, wherever in the line it falls. Read back by a parser that is not ours; CR LF, CR and LF are one line break in text.
it('holds what a name may hold: line breaks, signs that mean something, emoji at every place of a line', () => {
  const read = (partName: string) => {
    const due = {
      id: 'order-by.die',
      kind: 'order-by',
      onDay: '2027-02-28',
      partId: 'die',
      quantity: 2,
    } as const;
    const feed = feedText({ ...input, dues: [{ ...due, partName }] });
    for (const line of feed.split('\r\n')) expect(Buffer.byteLength(line, 'utf8')).toBeLessThanOrEqual(75);
    expect(Buffer.from(feed, 'utf8').toString('utf8')).toBe(feed);
    expect(feed.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const [event, ...more] = new ICAL.Component(ICAL.parse(feed)).getAllSubcomponents('vevent');
    expect(more).toEqual([]);
    return new ICAL.Event(event).summary.replace('Last day to order 2 × ', '');
  };
  for (const name of ['a;b,c\\d', 'a\\nb', 'a:b"c"', ';;,,', '\\'])
    expect(read(name), JSON.stringify(name)).toBe(name);
  for (const eol of ['\n', '\r\n', '\r'])
    expect(read(`die${eol}END:VEVENT${eol}BEGIN:VALARM`)).toBe('die\nEND:VEVENT\nBEGIN:VALARM');
  for (let before = 0; before < 80; before++) {
    const name = `${'x'.repeat(before)}🔧👩🏽‍🔧⅜é🇮🇸${'y'.repeat(70)}`;
    expect(read(name)).toBe(name);
  }
});

// source: published. RFC 5545 §3.8.2.4, §3.6.1: an all-day event says VALUE=DATE, and ends on the day after, over the end of a
// year and on a leap day too.
it('marks all-day events by their dates', () => {
  expect(text).toContain('DTSTART;VALUE=DATE:20261231\r\n');
  expect(text).toContain('DTEND;VALUE=DATE:20270101\r\n');
  expect(text).toContain('DTSTART;VALUE=DATE:20280228\r\n');
  expect(text).toContain('DTEND;VALUE=DATE:20280229\r\n');
  for (const event of events()) expect(event.startDate.isDate && event.endDate.isDate).toBe(true);
});

// source: published. RFC 5545 §3.8.4.7, §3.8.7: UID and DTSTAMP in every event; UIDs stay when a day moves, SEQUENCE then rises.
it('keeps the identity of a thing when its day moves', () => {
  const moved = feedText({
    ...input,
    version: 121,
    dues: dues.map((due) => ({ ...due, onDay: '2027-01-05' })),
  });
  const uids = (feed: string) => [...feed.matchAll(/^UID:(.*)\r$/gm)].map(([, uid]) => uid);
  const sequence = (feed: string) => Number(/^SEQUENCE:(\d+)\r$/m.exec(feed)?.[1]);
  expect(uids(moved)).toEqual(uids(text));
  expect(new Set(uids(text)).size).toBe(dues.length);
  expect(sequence(moved)).toBeGreaterThan(sequence(text));
  expect(sequence(feedText({ ...input, today: '2026-11-26' }))).toBeGreaterThan(sequence(text));
  expect([...text.matchAll(/^DTSTAMP:20261125T083000Z\r$/gm)]).toHaveLength(dues.length);
});

// source: published. RFC 5545 §3.7: PRODID and VERSION are required; a feed that is only published carries no METHOD. No alarms by choice.
it('has the head that is required, and nothing that rings', () => {
  expect(text).toMatch(/^BEGIN:VCALENDAR\r\nVERSION:2\.0\r\nPRODID:/);
  for (const word of ['METHOD', 'VALARM', 'ATTENDEE', 'ORGANIZER']) expect(text).not.toContain(word);
  expect(text).toContain('http://shop.local:4170/tools/G-1');
});

// source: published. RFC 5545 §3.4: a shop with nothing due still has a calendar that can be read.
it('is a calendar when nothing is due', () => {
  expect(ICAL.parse(feedText({ ...input, dues: [] }))[0]).toBe('vcalendar');
});

describe('the kinds that an address asks for', () => {
  // source: hand. One, several, none, nonsense.
  it('are those that there are, or all', () => {
    expect(askedKinds('calibration')).toEqual(['calibration']);
    expect(askedKinds(['order-by', 'job-due', 'x'])).toEqual(['job-due', 'order-by']);
    expect(askedKinds(undefined)).toEqual(DUE_KINDS);
    expect(askedKinds(['<script>'])).toEqual(DUE_KINDS);
  });
});
