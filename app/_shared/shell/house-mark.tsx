/** The mark of the house: the threaded cone end of a tube, in section, left hand. Same drawing as app/icon.svg. */
export function HouseMark({ size = 32 }: { readonly size?: number }) {
  return (
    <svg viewBox="0 0 32 32" width={size} height={size} aria-hidden="true" focusable="false">
      <path
        fill="currentColor"
        d="M2 5h2l1.5 2.8L7 5l1.5 2.8L10 5l1.5 2.8L13 5l1.5 2.8L16 5h3l9 5.1V14H2ZM2 27h.5L4 24.2 5.5 27 7 24.2 8.5 27 10 24.2 11.5 27 13 24.2l1.5 2.8H19l9-5.1V18H2Z"
      />
      <path fill="none" stroke="currentColor" strokeWidth="1" strokeDasharray="7 2 2 2" d="M0 16h32" />
    </svg>
  );
}
