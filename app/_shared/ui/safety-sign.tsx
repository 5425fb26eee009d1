/**
 * <SafetySign name="eye-protection" size={56} />: safety signs drawn by us from the general descriptions of ISO 7010
 * (titles and numbers of M004, M009, M011, M022 published; the others from memory): shape and colour after ISO 3864-1:
 * blue disc = must, yellow triangle with black band = beware, red ring with bar = must not, green square = safe condition.
 * Not the standard's own artwork: a shop that posts signs on its walls buys them.
 */
import type { ReactNode } from 'react';
import { SIGN, type SignKind, type SignName } from './safety-sign-drawings';

export type { SignName } from './safety-sign-drawings';

const FIELD: Record<SignKind, ReactNode> = {
  must: <circle cx="32" cy="32" r="31" fill="var(--safety-blue)" />,
  beware: (
    <>
      <path
        d="M32 4.500L61 57H3Z"
        fill="var(--safety-black)"
        stroke="var(--safety-black)"
        strokeWidth="5"
        strokeLinejoin="round"
      />
      <path
        d="M32 11.500L54.5 53h-45Z"
        fill="var(--safety-yellow)"
        stroke="var(--safety-yellow)"
        strokeWidth="2"
        strokeLinejoin="round"
      />
    </>
  ),
  'must-not': <circle cx="32" cy="32" r="31" fill="#fff" />,
  safe: <rect x="1" y="1" width="62" height="62" rx="2" fill="var(--safety-green)" />,
};

export function SafetySign({ name, size = 48 }: { readonly name: SignName; readonly size?: number }) {
  const { kind, title, drawing } = SIGN[name];
  return (
    <svg viewBox="0 0 64 64" width={size} height={size} role="img" style={{ flex: 'none' }}>
      <title>{title}</title>
      {FIELD[kind]}
      {drawing}
      {kind === 'must-not' ? (
        <path
          d="M32 4.500a27.5 27.5 0 1 0 .01 0ZM12.6 12.600l38.8 38.8"
          fill="none"
          stroke="var(--safety-red)"
          strokeWidth="6"
        />
      ) : null}
    </svg>
  );
}
