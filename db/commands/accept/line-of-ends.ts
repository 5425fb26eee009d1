import { ok, type Refusal, type Result, refuse } from '../../../lib/result';
import type { AcceptEnds } from '../../../lib/shop/acceptance-input';
import type { Db } from '../../open';
import { findAcceptance, findLineStanding, listAcceptances } from '../../queries/acceptance';
import { findLine, type LineRow } from '../../queries/jobs';

/** The job that the ends belong to; none where they belong to no line. */
interface LineOfEnds {
  readonly jobId: string | null;
}

/** Whether these ends can be of the line, and of the earlier look that they repeat, where they name them. */
export function checkLine(db: Db, input: AcceptEnds): Result<LineOfEnds, Refusal> {
  const again = checkRegauge(db, input);
  if (!again.ok) return again;
  if (input.jobLineId === null) return ok({ jobId: null });
  const line = findLine(db, input.jobLineId);
  if (line === undefined)
    return refuse('unknown-line', `No line ${input.jobLineId} is on any job.`, 'jobLineId');
  if (line.connectionId !== input.connectionId || line.materialId !== input.materialId)
    return refuse('line-size', `Line ${line.id} is another size or material than these ends.`, 'jobLineId');
  if (input.regaugesId === null) {
    const room = checkRoom(db, line, input);
    if (!room.ok) return room;
  }
  return ok({ jobId: line.jobId });
}

function checkRoom(db: Db, line: LineRow, { endCount, endMarks }: AcceptEnds): Result<null, Refusal> {
  const { acceptedEnds } = findLineStanding(db, line.id);
  const left = line.ends - acceptedEnds;
  if (endCount > left)
    return refuse(
      'too-many',
      left <= 0
        ? `All ${line.ends} ends of ${line.id} are accepted already. Were these among them? Then gauge them again there.`
        : `${line.id} has ${line.ends} ends; ${acceptedEnds} are accepted, so ${endCount} more would be too many.`,
      'endCount',
    );
  const known = new Set(
    listAcceptances(db, line.id)
      .filter(({ decision, regaugesId }) => decision === 'accepted' && regaugesId === null)
      .flatMap((look) => look.endMarks),
  );
  const twice = endMarks.find((mark) => known.has(mark));
  if (twice !== undefined)
    return refuse('mark-taken', `“${twice}” is accepted already. Gauge it again there.`, 'endMarks');
  return ok(null);
}

function checkRegauge(db: Db, input: AcceptEnds): Result<null, Refusal> {
  if (input.regaugesId === null) return ok(null);
  const earlier = findAcceptance(db, input.regaugesId);
  if (earlier === undefined || earlier.decision !== 'accepted' || earlier.regaugesId !== null)
    return refuse('regauges', 'The ends to be gauged again are not among those accepted.', 'regaugesId');
  if (earlier.jobLineId !== input.jobLineId || earlier.connectionId !== input.connectionId)
    return refuse('regauges', 'The ends to be gauged again belong to another line.', 'regaugesId');
  if (input.endCount > earlier.endCount)
    return refuse(
      'regauges',
      `Only ${earlier.endCount} ends were accepted there; ${input.endCount} cannot be gauged again.`,
      'endCount',
    );
  return ok(null);
}
