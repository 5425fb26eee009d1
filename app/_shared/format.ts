/**
 * The only place that rounds and prints units. Pure: no clock, no locale of the machine; `today` and the time zone are
 * passed in. Estimates are rounded DOWN to what the shop can rely on; counts are printed exactly.
 *
 *   counts      count(24, 'end')                     24 ends
 *   estimates   ends(34.8)                           about 34          endsWithUnit(34.8) about 34 ends
 *   chance      chanceWords(0.7)                     about 7 in 10     percent(0.7) 70 %
 *   sizes       sizeName(0.5625)                     9⁄16              sizeName(0.5625, 'high') 9⁄16 high pressure
 *   lengths     lengthText(23.8125, 'mm')            23.8 mm           lengthText(23.8125, 'in') 15⁄16 in
 *   days        inDays('2026-12-07', today)          in 12 days, Mon 7 Dec
 *   money       money(12500, 'EUR')                  €125.00           estimatedMoney(10727, 'USD') $107
 *   exposure    exposureText('die', 430)             430 turns         exposureText('blade', 12400) 12.4 cm³
 */
import { type EdgeKind, SERVICE_LABEL, type Service } from '@/lib/shop/vocabulary';
import { mmToIn } from '@/lib/units/inch-mm';

const THIN = '\u202f';
const SLASH = '\u2044';
const MINUS = '\u2212';

/** Whole number with a thin space between thousands: 12 400. */
export function whole(n: number): string {
  const digits = String(Math.abs(Math.round(n)));
  const grouped = digits.length > 4 ? digits.replace(/\B(?=(\d{3})+$)/g, THIN) : digits;
  return Math.round(n) < 0 ? `${MINUS}${grouped}` : grouped;
}

function fixed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  const [units = '0', rest] = text.split('.');
  const grouped = whole(Number(units));
  const sign = value < 0 && Number(text) !== 0 ? MINUS : '';
  return `${sign}${grouped}${rest ? `.${rest}` : ''}`;
}

/** An exact count with its noun: 1 end, 24 ends. `plural` when it is not the noun with an s. */
export function count(n: number, noun: string, plural = `${noun}s`): string {
  return `${whole(n)} ${Math.round(n) === 1 ? noun : plural}`;
}

/** The number an estimate of ends is printed as: floored; from 100 in steps of 10, from 1000 in steps of 100. */
export function floorEnds(estimate: number): number {
  const floor = Math.max(0, Math.floor(estimate));
  const step = floor >= 1000 ? 100 : floor >= 100 ? 10 : 1;
  return Math.floor(floor / step) * step;
}

/** An estimate of ends in words: "about 34"; below one end: "none". Infinite or unknown: "not known". */
export function ends(estimate: number): string {
  if (!Number.isFinite(estimate)) return 'not known';
  const n = floorEnds(estimate);
  return n === 0 ? 'none' : `about ${whole(n)}`;
}

/** "about 34 ends", "about 1 end", "no ends". */
export function endsWithUnit(estimate: number, noun = 'end'): string {
  if (!Number.isFinite(estimate)) return 'not known';
  const n = floorEnds(estimate);
  return n === 0 ? `no ${noun}s` : `about ${count(n, noun)}`;
}

/** Probability in shop words; the extremes never say certain and never say impossible. */
export function chanceWords(probability: number): string {
  if (!(probability >= 0 && probability <= 1)) return 'not known';
  if (probability >= 0.99) return 'better than 99 in 100';
  if (probability >= 0.95) return 'better than 19 in 20';
  if (probability >= 0.9) return 'better than 9 in 10';
  if (probability < 0.01) return 'less than 1 in 100';
  if (probability < 0.05) return 'less than 1 in 20';
  const tenths = Math.min(9, Math.max(1, Math.round(probability * 10)));
  return tenths === 5 ? 'about even' : `about ${tenths} in 10`;
}

/** Percentage without false precision: steps of 5 between 10 and 90, whole per cent outside, never 0 or 100. */
export function percent(probability: number): string {
  if (!(probability >= 0 && probability <= 1)) return 'not known';
  if (probability < 0.01) return `under 1${THIN}%`;
  if (probability > 0.99) return `over 99${THIN}%`;
  const raw = probability * 100;
  const shown = raw >= 10 && raw <= 90 ? Math.round(raw / 5) * 5 : Math.round(raw);
  return `${shown}${THIN}%`;
}

/** A share that was counted, not estimated (first-pass yield): whole per cent. */
export function share(part: number, total: number): string {
  return total > 0 ? `${Math.round((part / total) * 100)}${THIN}%` : 'no entries yet';
}

/** Whole and fraction of an inch length, if it is a 64th exactly (to 1e-6 in); otherwise null. */
export function inchParts(inches: number): { whole: number; num: number; den: number } | null {
  const sixtyFourths = Math.round(inches * 64);
  if (!(inches >= 0) || Math.abs(inches * 64 - sixtyFourths) > 64e-6) return null;
  let [num, den] = [sixtyFourths % 64, 64];
  while (num > 0 && num % 2 === 0) [num, den] = [num / 2, den / 2];
  return { whole: Math.floor(sixtyFourths / 64), num, den: num === 0 ? 1 : den };
}

/** Inches as a true fraction where they are one (9⁄16, 1 1⁄8), otherwise three decimals (0.281). No unit. */
export function inches(value: number): string {
  const parts = inchParts(value);
  if (!parts) return value.toFixed(3);
  if (parts.num === 0) return String(parts.whole);
  return `${parts.whole > 0 ? `${parts.whole} ` : ''}${parts.num}${SLASH}${parts.den}`;
}

/** Name of a size as the shop says it: "9⁄16", "1", "9⁄16 high pressure". For markup use <SizeText>. */
export function sizeName(odIn: number, service?: Service): string {
  return service ? `${inches(odIn)} ${SERVICE_LABEL[service]}` : inches(odIn);
}

const DENOMINATOR_WORD: Record<number, [string, string]> = {
  2: ['half', 'halves'],
  4: ['quarter', 'quarters'],
  8: ['eighth', 'eighths'],
  16: ['sixteenth', 'sixteenths'],
  32: ['thirty-second', 'thirty-seconds'],
  64: ['sixty-fourth', 'sixty-fourths'],
};

/** A fraction as it is spoken: "9 sixteenths", "1 half", "3 over 7" where the trade has no word. */
export function fractionSpoken(num: number, den: number): string {
  const word = DENOMINATOR_WORD[den];
  return word ? `${num} ${num === 1 ? word[0] : word[1]}` : `${num} over ${den}`;
}

export type LengthUnit = 'mm' | 'in';

/** A length kept in mm, printed in the unit chosen: 23.8 mm, or 15⁄16 in, or 0.281 in. */
export function lengthText(mm: number, unit: LengthUnit): string {
  return unit === 'mm' ? `${fixed(mm, 1)} mm` : `${inches(mmToIn(mm))} in`;
}

/** A figure of a thread table, inches to four decimals: 0.5250. No unit. */
export function tableInches(lengthIn: number): string {
  return lengthIn.toFixed(4);
}

/** The same in mm to three decimals, rounded into the zone, so that a part made to it is also inside in inches. No unit. */
export function tableMm(lengthIn: number, limit: 'max' | 'min'): string {
  const thousandths = Number((lengthIn * 25_400).toFixed(3));
  return ((limit === 'max' ? Math.floor(thousandths) : Math.ceil(thousandths)) / 1000).toFixed(3);
}

/** A measured length, kept in mm, as fine as it can be read: 0.3450 in, 8.763 mm. */
export function measureText(mm: number, unit: LengthUnit): string {
  return unit === 'mm' ? `${fixed(mm, 3)} mm` : `${fixed(mmToIn(mm), 4)} in`;
}

/** A measuring wire, as wires are marked: 0.03208 in, 0.815 mm. */
export function wireText(mm: number, unit: LengthUnit): string {
  return unit === 'mm' ? `${fixed(mm, 3)} mm` : `${fixed(mmToIn(mm), 5)} in`;
}

/** An angle in degrees with no more decimals than it needs, at most two: 59°, 59.25°. */
export function degreesText(degrees: number): string {
  return `${Number(degrees.toFixed(2))}°`.replace('-', MINUS);
}

const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

function dayNumber(day: string): number {
  return Date.parse(`${day}T00:00:00Z`) / 86_400_000;
}

/** A day: "Mon 7 Dec"; with the year when it is not the year of `today`, or when no `today` is given. */
export function dayText(day: string, today?: string): string {
  const date = new Date(dayNumber(day) * 86_400_000);
  if (Number.isNaN(date.getTime())) return 'no date';
  const short = `${WEEKDAYS[date.getUTCDay()]} ${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]}`;
  return today?.slice(0, 4) === day.slice(0, 4) ? short : `${short} ${date.getUTCFullYear()}`;
}

/** Stretches of more days than this are said in months, from three years on in years; the day stands beside them. */
const DAYS_SAID = 92;

/** How long, as one says it: "12 days", "9 months", "4 years"; whole, rounded down. Domain: days of 0 or more. */
function stretch(days: number): string {
  if (days <= DAYS_SAID) return count(days, 'day');
  return days < 3 * 365 ? monthsText(days) : count(Math.floor(days / 365.25), 'year');
}

/** A day seen from today: "in 12 days, Mon 7 Dec", "today, Wed 25 Nov", "3 days ago, Sun 22 Nov", "in 9 months, …". */
export function inDays(day: string, today: string): string {
  const gap = dayNumber(day) - dayNumber(today);
  if (Number.isNaN(gap)) return 'no date';
  const near = gap === 0 ? 'today' : gap === 1 ? 'tomorrow' : gap === -1 ? 'yesterday' : undefined;
  const words = near ?? (gap > 0 ? `in ${stretch(gap)}` : `${stretch(-gap)} ago`);
  return `${words}, ${dayText(day, today)}`;
}

/** A due date: "due in 6 days, Tue 1 Dec", "due today, …", "5 days overdue, was due Fri 20 Nov". */
export function dueText(day: string, today: string): string {
  const gap = dayNumber(day) - dayNumber(today);
  if (Number.isNaN(gap)) return 'no due date';
  return gap < 0 ? `${stretch(-gap)} overdue, was due ${dayText(day, today)}` : `due ${inDays(day, today)}`;
}

/** A moment on the shop's wall clock: "14:05". */
export function clockText(ms: number, timeZone: string): string {
  return new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', timeZone }).format(ms);
}

/** A moment in the shop's time zone: "Wed 25 Nov 2026, 14:05". */
export function momentText(ms: number, timeZone: string, today?: string): string {
  const parts = new Intl.DateTimeFormat('en-CA', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(ms);
  const get = (type: string) => parts.find((part) => part.type === type)?.value ?? '';
  return `${dayText(`${get('year')}-${get('month')}-${get('day')}`, today)}, ${get('hour')}:${get('minute')}`;
}

/** Money kept in minor units: money(12500, 'EUR') is €125.00. Currency code after ISO 4217. */
export function money(minor: number, currency: string): string {
  const style = moneyStyle(currency);
  return style.format(minor / 10 ** minorDigits(style));
}

/** Money that is an estimate, to so many figures and without needless cents: 10 727 minor units are $107. */
export function estimatedMoney(minor: number, currency: string, figures = 3): string {
  const major = minor / 10 ** minorDigits(moneyStyle(currency));
  if (Math.abs(major) < 10 ** (figures - 1)) return money(Math.round(minor), currency);
  return moneyStyle(currency, { maximumSignificantDigits: figures }).format(major);
}

function moneyStyle(currency: string, more: Intl.NumberFormatOptions = {}): Intl.NumberFormat {
  return new Intl.NumberFormat('en-GB', {
    style: 'currency',
    currency,
    currencyDisplay: 'narrowSymbol',
    ...more,
  });
}

function minorDigits(style: Intl.NumberFormat): number {
  return style.resolvedOptions().maximumFractionDigits ?? 2;
}

/** What an edge has cut, in the shop's own measure: turns for a die, metal removed for a blade. */
export function exposureText(kind: EdgeKind, amount: number): string {
  if (kind === 'die') return count(amount, 'turn');
  return amount < 1000 ? `${whole(amount)} mm³` : `${fixed(amount / 1000, amount < 100_000 ? 1 : 0)} cm³`;
}

/** How many times faster something wears: 1.9×. */
export function timesText(factor: number): string {
  return `${factor >= 10 ? whole(factor) : factor.toFixed(1)}×`;
}

/** A factor that may lie below one, to two figures: 0.87, 1.5, 12. */
export function factorText(factor: number): string {
  return factor >= 10 ? whole(factor) : factor.toFixed(factor < 0.995 ? 2 : 1);
}

/** A typical life with how well it is known: "about 120 (95 to 150)". */
export function aboutBand({ low, median, high }: { low: number; median: number; high: number }): string {
  return `${ends(median)} (${whole(floorEnds(low))} to ${whole(floorEnds(high))})`;
}

/** Words in a row: "a", "a and b", "a, b and c". */
export function listWords(words: readonly string[], joiner = 'and'): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${joiner} ${words[words.length - 1]}`;
}

/** A volume as the shop reads it from a bottle: whole mL, from 100 mL on rounded down to tens. */
export function volumeText(ml: number): string {
  const floor = Math.max(0, Math.floor(ml + 1e-9));
  return `${whole(floor >= 100 ? Math.floor(floor / 10) * 10 : floor)}${THIN}mL`;
}

/** A stretch of time in whole months, rounded down: "13 months". Domain: days of 0 or more. */
export function monthsText(days: number): string {
  return count(Math.floor((days * 12) / 365 + 1e-9), 'month');
}
