import { ok, type Refusal, type Result, refuse } from '../result';
import type { Entry } from './event';
import type { ToolRecord } from './tool-record';
import { gaugeCalibrated } from './tool-step/calibration';
import { dieAdjusted, firstOffChecked, freed, piecesAccounted, reserved } from './tool-step/care';
import { issued, moved, returned } from './tool-step/custody';
import { cutLogged, edgeEnded, edgeRenewed } from './tool-step/edge';
import {
  fluidDisposed,
  fluidDropsCounted,
  fluidExtended,
  fluidLevelRead,
  fluidOpened,
} from './tool-step/fluid';
import { gaugeCertificateFiled, gaugeChecked, gaugeDropped, gaugeIntervalSet } from './tool-step/gauge';
import { toolMarked } from './tool-step/mark';
import { edgeRead } from './tool-step/reading';
import { received } from './tool-step/receipt';

/**
 * One more entry in a tool's history: the new record, or the refusal that keeps the entry out of the ledger. These are
 * the rules of what may happen to a tool; commands ask here and write only what is allowed, and a replay folds with
 * the same function, so the kept record and its history cannot disagree.
 */
export function evolveTool(tool: ToolRecord | undefined, entry: Entry): Result<ToolRecord, Refusal> {
  if (entry.kind === 'tool-received') {
    return tool === undefined
      ? ok(received(entry, entry.payload))
      : refuse('exists', `${tool.id} is already in the record.`, 'toolId');
  }
  if (tool === undefined) return refuse('unknown-tool', `No tool ${entry.subjectId} is in the record.`);
  return evolveKnown(tool, entry);
}

function evolveKnown(tool: ToolRecord, entry: Entry): Result<ToolRecord, Refusal> {
  switch (entry.kind) {
    case 'tool-issued':
      return issued(tool, entry.payload, entry);
    case 'tool-returned':
      return returned(tool, entry.payload, entry);
    case 'tool-moved':
      return moved(tool, entry.payload, entry);
    case 'cut-logged':
      return cutLogged(tool, entry.payload, entry);
    case 'tool-marked':
      return toolMarked(tool, entry.payload, entry);
    case 'tool-reserved':
      return reserved(tool, entry.payload, entry);
    case 'tool-freed':
      return freed(tool, entry.payload, entry);
    case 'pieces-accounted':
      return piecesAccounted(tool, entry.payload, entry);
    case 'die-adjusted':
      return dieAdjusted(tool, entry.payload, entry);
    case 'first-off-checked':
      return firstOffChecked(tool, entry.payload, entry);
    case 'edge-ended':
      return edgeEnded(tool, entry.payload, entry);
    case 'edge-read':
      return edgeRead(tool, entry.payload, entry);
    case 'edge-renewed':
      return edgeRenewed(tool, entry.payload, entry);
    case 'gauge-calibrated':
      return gaugeCalibrated(tool, entry.payload, entry);
    case 'gauge-checked':
      return gaugeChecked(tool, entry.payload, entry);
    case 'gauge-dropped':
      return gaugeDropped(tool, entry.payload, entry);
    case 'gauge-interval-set':
      return gaugeIntervalSet(tool, entry.payload, entry);
    case 'gauge-certificate-filed':
      return gaugeCertificateFiled(tool, entry.payload, entry);
    case 'fluid-opened':
      return fluidOpened(tool, entry.payload, entry);
    case 'fluid-level-read':
      return fluidLevelRead(tool, entry.payload, entry);
    case 'fluid-drops-counted':
      return fluidDropsCounted(tool, entry.payload, entry);
    case 'fluid-extended':
      return fluidExtended(tool, entry.payload, entry);
    case 'fluid-disposed':
      return fluidDisposed(tool, entry.payload, entry);
    default:
      return refuse('kind', `An entry "${entry.kind}" cannot be about a tool.`);
  }
}
