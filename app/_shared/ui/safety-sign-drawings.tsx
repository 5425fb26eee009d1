import type { ReactNode } from 'react';

/** What the field of a sign says after ISO 3864-1: blue disc, yellow triangle with black band, red ring with bar, green square. */
export type SignKind = 'must' | 'beware' | 'must-not' | 'safe';
export type SignName =
  | 'general-must'
  | 'eye-protection'
  | 'hand-protection'
  | 'wash-hands'
  | 'skin-cream'
  | 'read-manual'
  | 'general-warning'
  | 'sharp'
  | 'pressure'
  | 'flammable'
  | 'oxidizing'
  | 'no-gloves'
  | 'no-water-on-fire'
  | 'general-prohibition'
  | 'first-aid';

export interface SignDrawing {
  readonly kind: SignKind;
  readonly title: string;
  /** Registered number in ISO 7010. From memory. */
  readonly iso: string;
  readonly drawing: ReactNode;
}

const white = { fill: '#fff' } as const;
const black = { fill: 'var(--safety-black)' } as const;
const HAND =
  'M24 45V25.5a2.2 2.2 0 0 1 4.4 0V20a2.2 2.2 0 0 1 4.4 0v-2a2.2 2.2 0 0 1 4.4 0V21a2.2 2.2 0 0 1 4.4 0v12l2.6-3.6a2.2 2.2 0 0 1 3.6 2.6L41 45Z';
const FLAME =
  'M33 20c1 6 9 10 9 19 0 6-4 10-10 10s-10-4-10-10c0-4 2-7 4-9 0 3 1 5 3 5 3 0 1-8 4-15Zm-1 19c-3 3-4 4-4 6 0 2 2 3 4 3s4-1 4-3c0-3-3-4-4-6Z';

/** The drawings, on a field of 64 × 64. */
export const SIGN: Record<SignName, SignDrawing> = {
  'general-must': {
    kind: 'must',
    iso: 'M001',
    title: 'Must do',
    drawing: <path {...white} d="M29 14h6l-1 24h-4Zm0 28h6v6h-6Z" />,
  },
  'eye-protection': {
    kind: 'must',
    iso: 'M004',
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
    iso: 'M009',
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
    iso: 'M011',
    title: 'Wash your hands',
    drawing: (
      <>
        <path {...white} d="M12 34c7-3 12-2 17 1h10c3 0 3 4 0 4h-8 9l9-6c3-1.5 5 1 3 3.500L40 48H26l-14-3Z" />
        <path {...white} d="M26 12h14v5h-4.500v4h-5v-4H26ZM31 24h1.800v6H31Zm4 0h1.800v6H35Z" />
      </>
    ),
  },
  'skin-cream': {
    kind: 'must',
    iso: 'M022',
    title: 'Use skin cream',
    drawing: (
      <>
        <path {...white} d="M12 40c7-3 12-2 17 1h10c3 0 3 4 0 4h-8 9l9-6c3-1.5 5 1 3 3.500L40 53H26l-14-3Z" />
        <path {...white} d="M21 13l14-5 5 11-12 6Z" />
        <path
          {...white}
          d="M30 25l4-2 1.500 3.200-4 1.800ZM33.500 29.500c2 2.500 2.500 4 2.500 5.200a2.500 2.500 0 0 1-5 0c0-1.200.5-2.700 2.500-5.200Z"
        />
      </>
    ),
  },
  'read-manual': {
    kind: 'must',
    iso: 'M002',
    title: 'Read the instructions',
    drawing: (
      <>
        <path {...white} d="M12 40c7-2 14-1 19 3V24c-5-4-12-5-19-3Zm40 0c-7-2-14-1-19 3V24c5-4 12-5 19-3Z" />
        <circle {...white} cx="32" cy="15" r="5" />
      </>
    ),
  },
  'general-warning': {
    kind: 'beware',
    iso: 'W001',
    title: 'Beware',
    drawing: <path {...black} d="M29 22h6l-1 18h-4Zm0 21h6v6h-6Z" />,
  },
  sharp: {
    kind: 'beware',
    iso: 'W022',
    title: 'Beware of sharp edges',
    drawing: (
      <>
        <path {...black} d="M14 49v-8c4-1 7-4 9-7l8-5 2 2-5 6h14a2 2 0 0 1 0 4H32l-1 5-4 3Z" />
        <path {...black} d="M37 20l8 14.500H37Z" />
        <path {...black} d="M45 36.500h5v3h-5Z" />
      </>
    ),
  },
  pressure: {
    kind: 'beware',
    iso: 'W029',
    title: 'Beware of pressure',
    drawing: <path {...black} d="M17 48V36h10v12Zm12-8l5-2-1 3h12v2.500H33l1 3Zm0-9l8-7v4l5-3-8 10v-4Z" />,
  },
  flammable: {
    kind: 'beware',
    iso: 'W021',
    title: 'Beware: burns',
    drawing: <path {...black} fillRule="evenodd" d={FLAME} />,
  },
  oxidizing: {
    kind: 'beware',
    iso: 'W028',
    title: 'Beware: oxygen feeds a fire',
    drawing: (
      <>
        <path
          {...black}
          fillRule="evenodd"
          d="M32.500 17c1 4 7 7 7 13 0 2-.5 3.500-1.500 5a9.500 9.500 0 0 0-12 0c-1-1.500-1.500-3-1.500-5 0-3 1.500-5 3-6.500 0 2 .7 3.500 2 3.500 2.500 0 .8-5 3-10Z"
        />
        <path
          {...black}
          fillRule="evenodd"
          d="M32 34.500a7 7 0 1 1 0 14 7 7 0 0 1 0-14Zm0 3a4 4 0 1 0 0 8 4 4 0 0 0 0-8Z"
        />
        <path {...black} d="M22 50h20v2H22Z" />
      </>
    ),
  },
  'no-gloves': {
    kind: 'must-not',
    iso: 'P028',
    title: 'No gloves',
    drawing: <path {...black} d={`${HAND}M23 47h19v4H23Z`} />,
  },
  'no-water-on-fire': {
    kind: 'must-not',
    iso: 'P011',
    title: 'No water on this fire',
    drawing: (
      <>
        <path {...black} transform="translate(-6 2)" fillRule="evenodd" d={FLAME} />
        <path {...black} d="M37 18h11l-1.500 11h-8Z" />
        <path {...black} d="M36 33l-3 5 1.600.9 3-5ZM41 34l-2 5.500 1.700.6 2-5.500ZM46 34v6h1.800v-6Z" />
      </>
    ),
  },
  'general-prohibition': { kind: 'must-not', iso: 'P001', title: 'Must not do', drawing: null },
  'first-aid': {
    kind: 'safe',
    iso: 'E003',
    title: 'First aid',
    drawing: <path {...white} d="M26 12h12v14h14v12H38v14H26V38H12V26h14Z" />,
  },
};
