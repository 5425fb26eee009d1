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
  // tube ends, one inside the other
  sizes: (
    <>
      <circle cx="12" cy="12" r="9" />
      <circle cx="12" cy="12" r="5.5" />
      <circle cx="12" cy="12" r="2" />
    </>
  ),
  // a sheet into the tray
  import: <path d="M12 3v11M7.5 10l4.5 4.5 4.5-4.500M3 15v6h18v-6" />,
  // a slide gauge
  setup: <path d="M3 4h18v4H3ZM6 8v11l3-3V8M13 8v8l3 3V8M19 4v1.800M15.5 4v1.8" />,
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
