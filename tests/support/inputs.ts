import type { ZodType } from 'zod';
import * as input from '@/lib/shop/command-input';
import { CostsSchema, DEFAULT_COSTS } from '@/lib/shop/costs';
import { JobLineSchema } from '@/lib/shop/job';
import * as noun from '@/lib/shop/noun';
import { OrderSchema } from '@/lib/shop/order';
import { PartSchema } from '@/lib/shop/part';
import { ShopSchema } from '@/lib/shop/shop-settings';
import { HIGH, MATERIALS, NOW_MS, part } from './db';

const about = { entryId: 'entry-000001', deviceAtMs: NOW_MS, reason: 'a note', toolId: 'D-56-01' };
const { toolId: _, ...entered } = about;
const line = {
  ...{ lineNo: 1, connectionId: HIGH.id, materialId: '316', heat: 'A1', ends: 20, operations: ['thread'] },
  ...{ startOnDay: '2026-03-09', dueOnDay: '2026-03-13', value: 'ordinary' },
};
const order = {
  id: 'PO-1',
  partId: 'die-56',
  quantity: 3,
  placedOnDay: '2026-02-01',
  expectedOnDay: '2026-03-01',
};
const row = {
  ...{
    connectionId: HIGH.id,
    materialId: '316',
    heat: 'A1',
    ends: 5,
    goodEnds: 4,
    dry: false,
    rework: false,
  },
  ...{ rejects: [{ cause: 'go-tight', count: 1 }], jobLineId: 'J-1.1', cutAtMs: NOW_MS },
};
const receipt = {
  ...{ partId: 'die-56', hand: 'LH', lot: 'L1', receivedOnDay: '2026-03-02', orderId: 'PO-1', levelMl: 1 },
  ...{ dueOnDay: '2026-12-31', expiresOnDay: '2026-12-31', openedOnDay: '2026-03-02' },
};
const counted = { known: 'counted', connectionId: HIGH.id, materialId: '316', ends: 9 };

/** Every schema at the door with something that it takes. */
export const TAKEN: Record<string, readonly [schema: ZodType<object>, value: object]> = {
  LogCutInput: [input.LogCutInput, { ...about, ...row, threadLength: { typed: '11.1', unit: 'mm' } }],
  CorrectCutInput: [input.CorrectCutInput, { ...entered, targetId: 'entry-000002', rightToolId: 'D-56-02' }],
  IssueToolInput: [input.IssueToolInput, { ...about, toPersonId: 'ash', jobLineId: 'J-1.1', bench: '4' }],
  ReturnToolInput: [input.ReturnToolInput, { ...about, condition: 'ok' }],
  MoveToolInput: [input.MoveToolInput, { ...about, to: 'regrind', backOnDay: '2026-03-20' }],
  EndEdgeInput: [input.EndEdgeInput, { ...about, cause: 'worn', to: 'scrapped' }],
  RenewEdgeInput: [input.RenewEdgeInput, { ...about, onDay: '2026-03-02', firstOff: 'owed' }],
  RecordCalibrationInput: [
    input.RecordCalibrationInput,
    { ...about, onDay: '2026-03-02', result: 'pass', dueOnDay: '2027-03-01', certificate: 'C-1' },
  ],
  OpenFluidInput: [input.OpenFluidInput, { ...about, onDay: '2026-03-02' }],
  ReadFluidLevelInput: [input.ReadFluidLevelInput, { ...about, levelMl: 120, onDay: '2026-03-02' }],
  OpeningInput: [input.OpeningInput, counted],
  ReceiveToolInput: [input.ReceiveToolInput, { ...about, ...receipt, opening: counted }],
  PlanJobInput: [input.PlanJobInput, { ...entered, job: { id: 'J-1', title: 'T', lines: [line] } }],
  CloseJobInput: [input.CloseJobInput, { ...entered, jobId: 'J-1', how: 'done' }],
  PlaceOrderInput: [input.PlaceOrderInput, { ...entered, order }],
  SlipOrderInput: [input.SlipOrderInput, { ...entered, orderId: 'PO-1', expectedOnDay: '2026-03-20' }],
  ReverseEntryInput: [input.ReverseEntryInput, { ...entered, targetId: 'entry-000002' }],
  ShopSchema: [
    ShopSchema,
    {
      ...{ name: 'Shop', units: 'in', currency: 'USD', fluidWasteFactor: 3 },
      ...{ requiredProbability: 0.9, requiredProbabilityPrecious: 0.95 },
    },
  ],
  CostsSchema: [CostsSchema, DEFAULT_COSTS],
  PersonSchema: [noun.PersonSchema, { id: 'lee', name: 'Lee', role: 'lead' }],
  ConnectionSchema: [noun.ConnectionSchema, HIGH],
  MaterialSchema: [noun.MaterialSchema, MATERIALS[0] ?? {}],
  PartSchema: [
    PartSchema,
    part({
      id: 'p',
      role: 'fluid',
      permittedMaterialIds: ['316'],
      dropsPerMl: 30,
      containerMl: 1000,
      leadTimeDays: 3,
      priceMinor: 5,
    }),
  ],
  LifeGuessSchema: [
    noun.LifeGuessSchema,
    { partId: 'die-56', connectionId: HIGH.id, ends: 150, giveOrTake: 2 },
  ],
  JobLineSchema: [JobLineSchema, line],
  OrderSchema: [OrderSchema, order],
};

/** What nobody means to send, but somebody will. */
export const HOSTILE: readonly unknown[] = [
  ...[
    undefined,
    null,
    true,
    {},
    [],
    [[]],
    [null],
    '',
    ' ',
    'x'.repeat(100_000),
    '\u0000',
    'a\u202eb',
    '\u200b',
    '\ud800',
  ],
  ...[Number.NaN, Number.POSITIVE_INFINITY, -1, -0.5, 1e308, 2 ** 53, 0.1, 1n, new Date(0), () => 1],
  ...['__proto__', 'constructor', '2026-02-30', '2026-13-01', '9999-12-31', `'; DROP TABLE entry; --`],
  JSON.parse('{"__proto__": {"ok": true}}'),
];
