/** One tool of the example shop as cells of a tools file; dates are filled in when the file is written. */
export interface ExampleTool {
  readonly tool_id: string;
  readonly kind: string;
  readonly size?: string;
  readonly service?: string;
  readonly hand?: string;
  readonly lot?: string;
  readonly opening?: string;
  readonly opening_service?: string;
  readonly opening_material?: string;
  readonly state?: string;
  readonly note?: string;
  /** Under calibration: gets a due day. */
  readonly calibrated?: boolean;
  /** Fluid: what the can holds. */
  readonly fluidMl?: number;
}

const SIZES = [
  { size: '3/8 in', code: '38' },
  { size: '9/16 in', code: '56' },
] as const;

/** The size-bound and class-bound items of the crib, then what every size shares. No 9/16 die is left unworn. */
export const EXAMPLE_TOOLS: readonly ExampleTool[] = [
  ...dies('38', '3/8 in', 4, 'K-12'),
  {
    ...{ tool_id: 'D-38-05', kind: 'die', size: '3/8 in', hand: 'LH', lot: 'K-12' },
    ...{ opening: '40', opening_service: 'medium', opening_material: '316-cw', note: 'from the old card' },
  },
  { tool_id: 'D-38-06', kind: 'die', size: '3/8 in', hand: 'LH', lot: 'K-19', opening: 'new' },
  ...dies('56', '9/16 in', 3, 'K-07'),
  ...blades('38', '3/8 in', 'medium', 5),
  ...blades('56', '9/16 in', 'medium', 3),
  ...blades('56H', '9/16 in', 'high', 4),
  ...SIZES.flatMap(({ size, code }) => sizeSet(size, code)),
  { tool_id: 'G-38-GO-2', kind: 'GO ring', size: '3/8 in', hand: 'LH', calibrated: true },
  gauge('CG-38-1', 'cone gauge', '3/8 in', 'medium'),
  gauge('CG-56-1', 'cone gauge', '9/16 in', 'medium'),
  gauge('CG-56H-1', 'cone gauge', '9/16 in', 'high'),
  gauge('LG-38-1', 'thread-length gauge', '3/8 in', 'medium'),
  gauge('LG-56-1', 'thread-length gauge', '9/16 in', 'medium'),
  gauge('LG-56H-1', 'thread-length gauge', '9/16 in', 'high'),
  ...['BDY-A', 'BDY-B'].map((tool_id) => ({ tool_id, kind: 'coning body' })),
  ...['STK-A', 'STK-B'].map((tool_id) => ({ tool_id, kind: 'die stock' })),
  ...['MKR-1', 'MKR-2'].map((tool_id) => ({ tool_id, kind: 'micrometer', calibrated: true })),
  { tool_id: 'TQW-1', kind: 'torque wrench', calibrated: true },
  ...['DBR-1', 'DBR-2'].map((tool_id) => ({ tool_id, kind: 'deburring tool' })),
  ...['BRS-1', 'BRS-2', 'BRS-3'].map((tool_id) => ({ tool_id, kind: 'brush' })),
  { tool_id: 'F-L01', kind: 'cutting fluid', lot: 'L01', fluidMl: 3200 },
  { tool_id: 'F-L02', kind: 'cutting fluid', lot: 'L02', fluidMl: 5000 },
];

function dies(code: string, size: string, count: number, lot: string): ExampleTool[] {
  return numbered(`D-${code}-0`, count).map((tool_id) => ({
    tool_id,
    kind: 'die',
    size,
    hand: 'LH',
    lot,
    opening: 'new',
  }));
}

function blades(code: string, size: string, service: string, count: number): ExampleTool[] {
  return numbered(`B-${code}-0`, count).map((tool_id) => ({
    tool_id,
    kind: 'blade',
    size,
    service,
    lot: 'R-3',
    opening: 'new',
  }));
}

/** Guides, collets, rings and the setting plug of one tube size. */
function sizeSet(size: string, code: string): ExampleTool[] {
  return [
    { tool_id: `GDE-${code}-1`, kind: 'coning guide', size },
    { tool_id: `TGD-${code}-1`, kind: 'threading guide', size },
    { tool_id: `CLT-${code}-1`, kind: 'collet', size },
    { tool_id: `G-${code}-GO-1`, kind: 'GO ring', size, hand: 'LH', calibrated: true },
    { tool_id: `G-${code}-NG-1`, kind: 'NOT GO ring', size, hand: 'LH', calibrated: true },
    { tool_id: `SP-${code}-1`, kind: 'setting plug', size, hand: 'LH', calibrated: true },
  ];
}

function gauge(tool_id: string, kind: string, size: string, service: string): ExampleTool {
  return { tool_id, kind, size, service, calibrated: true };
}

function numbered(stem: string, count: number): string[] {
  return Array.from({ length: count }, (_, index) => `${stem}${index + 1}`);
}
