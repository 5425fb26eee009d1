import ICAL from 'ical.js';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { launchBrowser } from '../../support/browser';
import { sitDown } from '../../support/person';
import { shopAddress } from '../../support/shop-address';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** The events of the feed as another program reads them. */
async function eventsOf(address: string): Promise<ICAL.Event[]> {
  const answer = await fetch(address);
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-type')).toContain('text/calendar');
  const calendar = new ICAL.Component(ICAL.parse(await answer.text()));
  return calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
}

// source: other-software. ical.js reads the feed; RFC 5545 §3.6.1: an all-day event ends on the day after, exclusive.
it('the feed is read by another program: all-day events, each once, the same days as the page shows', async () => {
  const lead = await sitDown(browser, { address: shopAddress(), name: 'Lead-1' });
  const { page, panel } = lead;
  const events = await eventsOf(`${shopAddress()}/calendar/feed.ics?kind=calibration`);
  expect(events.length).toBeGreaterThan(0);
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  for (const { startDate, endDate } of events) {
    expect(startDate.isDate).toBe(true);
    expect(endDate.subtractDate(startDate).toSeconds()).toBe(86_400);
  }
  const month = events[0]?.startDate.toString().slice(0, 7) ?? '';
  const ofMonth = events.filter(({ startDate }) => startDate.toString().startsWith(month));
  await page.goto(`/calendar?month=${month}&kind=calibration`);
  const agenda = panel(/^All of /);
  // source: identity. The page and the feed list the same things of the month, in the same words.
  for (const { summary } of ofMonth) await agenda.getByText(summary, { exact: false }).first().waitFor();
  expect(await agenda.getByRole('link').count()).toBe(ofMonth.length);
  expect(lead.faults).toEqual([]);
  await lead.leave();
});

it('the feed of everything holds more than the feed of one kind, and a kind that there is not asks for all', async () => {
  const feed = `${shopAddress()}/calendar/feed.ics`;
  const [all, calibrations, unknown] = await Promise.all(
    ['', '?kind=calibration', '?kind=nothing'].map((query) => eventsOf(`${feed}${query}`)),
  );
  expect(all?.length).toBeGreaterThan(calibrations?.length ?? 0);
  expect(unknown?.length).toBe(all?.length);
});
