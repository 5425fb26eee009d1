/**
 * <SafetySign name="eye-protection" size={56} />: safety signs drawn by us from the general descriptions of ISO 7010
 * (titles and numbers from TRADE §5; W022 and P028 from memory): shape and colour after ISO 3864-1: blue disc = must,
 * yellow triangle with black band = beware, red ring with bar = must not, green square = safe condition.
 * Not the standard's own artwork: a shop that posts signs on its walls buys them.
 */
import type { ReactNode } from 'react';

type SignKind = 'must' | 'beware' | 'must-not' | 'safe';
export type SignName =
  | 'general-must'
  | 'eye-protection'
  | 'hand-protection'
  | 'wash-hands'
  | 'read-manual'
  | 'general-warning'
  | 'sharp'
  | 'pressure'
  | 'no-gloves'
  | 'general-prohibition'
  | 'first-aid';

const white = { fill: '#fff' } as const;
const black = { fill: 'var(--safety-black)' } as const;
const HAND =
  'M24 45V25.5a2.2 2.2 0 0 1 4.4 0V20a2.2 2.2 0 0 1 4.4 0v-2a2.2 2.2 0 0 1 4.4 0V21a2.2 2.2 0 0 1 4.4 0v12l2.6-3.6a2.2 2.2 0 0 1 3.6 2.6L41 45Z';

const SIGN: Record<SignName, { kind: SignKind; title: string; drawing: ReactNode }> = {
  'general-must': {
    kind: 'must',
    title: 'Must do',
    drawing: <path {...white} d="M29 14h6l-1 24h-4Zm0 28h6v6h-6Z" />,
  },
  'eye-protection': {
    kind: 'must',
    title: 'Wear eye protection',
    drawing: (
      <>
        <path {...white} d="M32 10c-10 0-16 7-16 17v9c0 8 5 17 16 20 11-3 16-12 16-20v-9c0-10-6-17-16-17Z" />
        <path
          fill="var(--safety-blue)"
          d="M14 25h36v4h-2.5c.4 6-2.4 9.5-7.5 9.5-4.5 0-6.8-3-7.2-7h-1.6c-.4 4-2.7 7-7.2 7-5.1 0-7.9-3.5-7.5-9.500H14Z"
        />
      </>
    ),
  },
  'hand-protection': {
    kind: 'must',
    title: 'Wear protective gloves',
    drawing: (
      <>
        <path {...white} d={HAND} />
        <path {...white} d="M23 47.500h19v5H23Z" />
      </>
    ),
  },
  'wash-hands': {
    kind: 'must',
    title: 'Wash your hands',
    drawing: (
      <>
        <path {...white} d="M12 34c7-3 12-2 17 1h10c3 0 3 4 0 4h-8 9l9-6c3-1.5 5 1 3 3.500L40 48H26l-14-3Z" />
        <path {...white} d="M26 12h14v5h-4.500v4h-5v-4H26ZM31 24h1.800v6H31Zm4 0h1.800v6H35Z" />
      </>
    ),
  },
  'read-manual': {
    kind: 'must',
    title: 'Read the maker’s manual',
    drawing: (
      <>
        <path {...white} d="M12 40c7-2 14-1 19 3V24c-5-4-12-5-19-3Zm40 0c-7-2-14-1-19 3V24c5-4 12-5 19-3Z" />
        <circle {...white} cx="32" cy="15" r="5" />
      </>
    ),
  },
  'general-warning': {
    kind: 'beware',
    title: 'Beware',
    drawing: <path {...black} d="M29 22h6l-1 18h-4Zm0 21h6v6h-6Z" />,
  },
  sharp: {
    kind: 'beware',
    title: 'Beware of sharp edges',
    drawing: <path {...black} d="M18 45l21-21c2 4 1 8-3 12l-5 5 2 2-4 4-3.5-3.500L23 46Zm21 1h7v3h-7Z" />,
  },
  pressure: {
    kind: 'beware',
    title: 'Beware of pressure',
    drawing: <path {...black} d="M17 48V36h10v12Zm12-8l5-2-1 3h12v2.500H33l1 3Zm0-9l8-7v4l5-3-8 10v-4Z" />,
  },
  'no-gloves': {
    kind: 'must-not',
    title: 'No gloves',
    drawing: <path {...black} d={`${HAND}M23 47h19v4H23Z`} />,
  },
  'general-prohibition': { kind: 'must-not', title: 'Must not do', drawing: null },
  'first-aid': {
    kind: 'safe',
    title: 'First aid',
    drawing: <path {...white} d="M26 12h12v14h14v12H38v14H26V38H12V26h14Z" />,
  },
};

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
