import type { Role } from '../shop/vocabulary';

/** Why a scanned thing does not go into the kit. The counter shows the headline across the screen. */
export type StopCode =
  | 'unknown'
  | 'scanned-twice'
  | 'not-needed'
  | 'hand'
  | 'size'
  | 'pressure'
  | 'out'
  | 'away'
  | 'quarantined'
  | 'gone'
  | 'first-off'
  | 'kept'
  | 'calibration'
  | 'fluid-date'
  | 'fluid-not-permitted'
  | 'fluid-empty'
  | 'edge-ended';

/** What is in the way: its code, and a sentence with the way out. */
export type Stop = readonly [StopCode, string];

/** Large type at the counter: what is wrong, before any reading. */
export const STOP_HEADLINE: Record<StopCode, string> = {
  unknown: 'NOT IN THE RECORD',
  'scanned-twice': 'ALREADY IN THIS KIT',
  'not-needed': 'NOT NEEDED FOR THIS JOB',
  hand: 'HAND MISMATCH',
  size: 'WRONG SIZE',
  pressure: 'WRONG PRESSURE CLASS',
  out: 'ALREADY OUT',
  away: 'NOT IN THE CRIB',
  quarantined: 'QUARANTINED',
  gone: 'SCRAPPED OR LOST',
  'first-off': 'FIRST-OFF OWED',
  kept: 'KEPT FOR ANOTHER JOB',
  calibration: 'OUT OF CALIBRATION',
  'fluid-date': 'FLUID OUT OF DATE',
  'fluid-not-permitted': 'FLUID NOT PERMITTED',
  'fluid-empty': 'BOTTLE EMPTY',
  'edge-ended': 'EDGE TAKEN OUT OF SERVICE',
};

/** One scanned thing, judged for the line: it goes in, with what to mind, or it stops the kit. */
export type KitScan =
  | {
      readonly goes: true;
      readonly toolId: string;
      readonly role: Role;
      /** Something to know that does not stop the kit: a gauge due before the job is. */
      readonly mind: string | null;
    }
  | {
      readonly goes: false;
      readonly toolId: string;
      readonly code: StopCode;
      /** What is wrong with this very thing, and the way out. */
      readonly sentence: string;
    };
