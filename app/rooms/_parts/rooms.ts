/** Every page with an address of its own, grouped by what one wants to do there. Pages about one thing are reached from its list. */
export interface RoomGroup {
  readonly title: string;
  readonly pages: readonly { readonly href: string; readonly name: string; readonly what: string }[];
}

export const ROOMS: readonly RoomGroup[] = [
  {
    title: 'At the vise',
    pages: [
      { href: '/bench', name: 'Bench', what: 'will it last, count, stop, finish' },
      { href: '/accept', name: 'Gauge and accept', what: 'ends against the gauges, by the rule of the job' },
      { href: '/bench/conflicts', name: 'To settle', what: 'entered without network and not taken' },
    ],
  },
  {
    title: 'At the counter',
    pages: [
      { href: '/crib', name: 'Crib', what: 'kits out, kits back, what is missing' },
      { href: '/crib/count', name: 'Count', what: 'the shelf against the record, by scanner' },
      { href: '/tools/receive', name: 'Receive', what: 'what came in, its hand looked at' },
      { href: '/labels', name: 'Labels', what: 'sheets and single labels' },
    ],
  },
  {
    title: 'Tools and what they have left',
    pages: [
      { href: '/tools', name: 'Tools', what: 'every marked thing, by size' },
      { href: '/wear', name: 'Wear', what: 'how long edges last here, by material, lot, supplier and fluid' },
      { href: '/scorecard', name: 'Scorecard', what: 'how often the figures were right' },
      { href: '/parts', name: 'Parts', what: 'what can be bought, with prices and lead times' },
    ],
  },
  {
    title: 'Plan and orders',
    pages: [
      { href: '/plan', name: 'Plan', what: 'can we make it, and what is in the way' },
      { href: '/plan/what-if', name: 'What if', what: 'a new job, a late order, a lost die' },
      { href: '/plan/weeks', name: 'Sizes by week', what: 'what can be made when' },
      { href: '/plan/week', name: 'Issue order', what: 'which tool goes to which line this week' },
      { href: '/plan/replace', name: 'Replace', what: 'what to change before it fails' },
      { href: '/plan/orders', name: 'Orders', what: 'what to order, by when, why' },
      { href: '/plan/costs', name: 'Costs', what: 'what an end costs' },
      { href: '/calendar', name: 'Calendar', what: 'what falls due, and a feed of it' },
    ],
  },
  {
    title: 'Gauges and proof',
    pages: [
      { href: '/gauges', name: 'Gauges', what: 'what is due, certificates, intervals' },
      { href: '/recalls', name: 'Recalls', what: 'a gauge found out, and the ends in doubt' },
      { href: '/trace', name: 'Trace', what: 'one end: who, when, with what' },
      { href: '/ledger', name: 'Log', what: 'everything that happened' },
    ],
  },
  {
    title: 'Fluid',
    pages: [
      { href: '/fluid', name: 'Fluid', what: 'which bottle first, how long it lasts' },
      { href: '/fluid/register', name: 'Register', what: 'the chemical register, to print' },
    ],
  },
  {
    title: 'Sizes and threads',
    pages: [
      { href: '/sizes', name: 'Sizes', what: 'the table of connections and materials' },
      { href: '/threads', name: 'Thread limits', what: 'limits of size and three wires' },
    ],
  },
  {
    title: 'The shop',
    pages: [
      { href: '/setup', name: 'Set-up', what: 'names, settings, first counts' },
      { href: '/import', name: 'Import', what: 'spreadsheets in and out' },
      { href: '/trust', name: 'Tablets', what: 'an address that opens without network' },
      { href: '/who', name: 'Who', what: 'choose your name' },
    ],
  },
];
