import type { Permit } from '../../lib/access/permit';
import type { Refusal, Result } from '../../lib/result';
import type { ReadEdge } from '../../lib/shop/command-input';
import type { Env, Recorded } from '../ledger/ledger';
import type { Db } from '../open';
import { recordToolEntry } from './tool-entry';

/** Writes down an inspection of an edge: a land, a pitch diameter, a ring, or a grade by eye. */
export function readEdge(
  db: Db,
  permit: Permit<'read-edge'>,
  input: ReadEdge,
  env: Env,
): Result<Recorded, Refusal> {
  const { finding, onDay } = input;
  return recordToolEntry(db, permit, input, env, { kind: 'edge-read', payload: { finding, onDay } });
}
