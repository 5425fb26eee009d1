/** Line drawings for the navigation, one pen width, on a 24 × 24 field. Each is a thing from the shop. */
import type { ReactNode } from 'react';
import type { NavIconName } from './nav';

const ICON: Record<NavIconName, ReactNode> = {
  // a work card on its peg
  today: <path d="M5 6h14v15H5ZM9.5 6V3h5v3M8.5 11h7M8.5 15h4.5" />,
  // a round die: clearance holes and the split
  tools: (
    <>
      <circle cx="12" cy="12" r="9" />
      <circle cx="12" cy="12" r="3" />
      <path d="M12 3v6M5.6 16.200l2.2-1.300M18.4 16.200l-2.2-1.3" />
    </>
  ),
  // lines of a plan against days
  plan: <path d="M4 3v18h17M8 8h7M11 12.500h8M8 17h4" />,
  // tally strokes
  log: <path d="M5 5v14M9.5 5v14M14 5v14M18.5 5v14M2.5 16.500l19-9" />,
  // a tube in the jaws of a vise
  bench: (
    <>
      <circle cx="12" cy="9" r="4" />
      <path d="M3 4h4v10H3ZM17 4h4v10h-4ZM5 14v6h14v-6" />
    </>
  ),
  // a rack with its pegs
  crib: <path d="M3 4h18M6 4v5M12 4v5M18 4v5M4 9h4v8H4ZM10 9h4v5h-4ZM16 9h4v10h-4Z" />,
  // a ring gauge with its handle
  gauges: (
    <>
      <circle cx="10" cy="10" r="7" />
      <circle cx="10" cy="10" r="3.2" />
      <path d="M15.200 15.200l6 6" />
    </>
  ),
  // a drop
  fluid: <path d="M12 3c3.500 4.500 6 7.400 6 11a6 6 0 0 1-12 0c0-3.600 2.500-6.500 6-11Z" />,
  // drawers
  rooms: <path d="M4 3h16v18H4ZM4 9h16M4 15h16M10.5 6h3M10.500 12h3M10.5 18h3" />,
};

export function NavIcon({ name }: { readonly name: NavIconName }) {
  return (
    <svg
      viewBox="0 0 24 24"
      width="22"
      height="22"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.6"
      strokeLinejoin="round"
      aria-hidden="true"
      focusable="false"
    >
      {ICON[name]}
    </svg>
  );
}
