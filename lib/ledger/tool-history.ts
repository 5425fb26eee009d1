import { ok, type Refusal, type Result, refuse } from '../result';
import type { Entry } from './event';
import type { ToolRecord } from './tool-record';
import { issued, moved, returned } from './tool-step/custody';
import { cutLogged, edgeEnded, edgeRenewed } from './tool-step/edge';
import { fluidLevelRead, fluidOpened } from './tool-step/fluid';
import { gaugeCalibrated } from './tool-step/gauge';
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
    case 'edge-ended':
      return edgeEnded(tool, entry.payload, entry);
    case 'edge-read':
      return edgeRead(tool, entry.payload, entry);
    case 'edge-renewed':
      return edgeRenewed(tool, entry.payload, entry);
    case 'gauge-calibrated':
      return gaugeCalibrated(tool, entry.payload, entry);
    case 'fluid-opened':
      return fluidOpened(tool, entry.payload, entry);
    case 'fluid-level-read':
      return fluidLevelRead(tool, entry.payload, entry);
    default:
      return refuse('kind', `An entry "${entry.kind}" cannot be about a tool.`);
  }
}
