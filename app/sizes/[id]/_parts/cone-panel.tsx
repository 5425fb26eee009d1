import { ConeDrawing } from '@/app/_shared/cone/cone-drawing';
import { degreesText, type LengthUnit, measureText } from '@/app/_shared/format';
import { Button, KeyValue, NumberField, Panel, Select } from '@/app/_shared/ui';
import {
  angleErrorToLargeEndDeg,
  type ConeError,
  checkConeError,
  coneWithAngleError,
} from '@/lib/cone/angle-error';
import { type ConeShape, SEAT_ANGLE_DEG } from '@/lib/cone/geometry';
import type { SeatContact } from '@/lib/cone/seating';
import type { Connection } from '@/lib/shop/noun';
import { mmToIn, rationalInToMm } from '@/lib/units/inch-mm';
import { type ConeQuestion, coneQuestion } from './cone-question';

type Asked = Readonly<Record<string, string | string[] | undefined>>;

const TOUCHES: Record<SeatContact, string> = {
  'small-end': 'at its small end, a thin ring at the nose',
  'large-end': 'at its large end: the nose stands clear of the seat',
  'whole-face': 'over its whole face, as far as angles go',
};

/** The cone of a row in its seat: where it touches, the gap, and what a blade out of angle or a nose off size does to it. */
export function ConePanel({
  connection,
  unit,
  asked,
}: {
  readonly connection: Connection;
  readonly unit: LengthUnit;
  readonly asked: Asked;
}) {
  const { odNum, odDen, noseMm, coneAngleDeg } = connection;
  const shape = { odMm: rationalInToMm({ num: odNum, den: odDen }), noseMm, coneAngleDeg };
  const question = coneQuestion(asked, unit);
  const answer = checkConeError(shape, question);
  return (
    <Panel
      title="The cone"
      id="cone"
      aside={`${degreesText(coneAngleDeg)} in a seat of ${degreesText(SEAT_ANGLE_DEG)}`}
    >
      <div className="columns">
        {answer.ok ? (
          <ConeDrawing
            shape={answer.value.cut}
            seated={answer.value.seated}
            seatAngleDeg={SEAT_ANGLE_DEG}
            unit={unit}
            title={`Cone in its seat, touching ${TOUCHES[answer.value.seated.contact]}`}
          />
        ) : (
          <p>{answer.refusal.sentence}</p>
        )}
        <div className="stack">
          {answer.ok ? <Answer answer={answer.value} unit={unit} /> : null}
          <Ask connection={connection} question={question} unit={unit} />
        </div>
      </div>
      <Rules shape={shape} unit={unit} />
    </Panel>
  );
}

function Answer({ answer, unit }: { readonly answer: ConeError; readonly unit: LengthUnit }) {
  const { seated, lengthMm, lengthChangeMm, noseChangeMm, noseDeeperMm } = answer;
  return (
    <KeyValue
      items={[
        { label: 'Touches', value: TOUCHES[seated.contact] },
        {
          label: 'Cone length',
          value: `${measureText(lengthMm, unit)}${changeText(lengthChangeMm, unit, 'longer', 'shorter')}`,
        },
        { label: 'Gap at the large end', value: gapText(seated.gapAtLargeEndMm, unit) },
        { label: 'Gap at the small end', value: gapText(seated.gapAtSmallEndMm, unit) },
        {
          label: 'Nose diameter',
          value: `${measureText(answer.cut.noseMm, unit)}${changeText(noseChangeMm, unit, 'larger', 'smaller')}`,
        },
        {
          label: 'Nose sits',
          value:
            changeText(noseDeeperMm, unit, 'deeper in the seat', 'further out').replace(/^, /, '') ||
            'where it should',
        },
      ]}
    />
  );
}

function Ask({
  connection,
  question,
  unit,
}: {
  readonly connection: Connection;
  readonly question: ConeQuestion;
  readonly unit: LengthUnit;
}) {
  const nose = unit === 'in' ? mmToIn(question.noseErrorMm) : question.noseErrorMm;
  return (
    <form action={`/sizes/${connection.id}#cone`} className="stack" aria-label="What an error does">
      <div className="columns">
        <NumberField
          name="angle"
          label="Blade wider by"
          entry="decimal"
          unit="°"
          hint="Included angle; minus for narrower"
          defaultValue={String(question.angleErrorDeg)}
        />
        <NumberField
          id="cone-nose"
          name="nose"
          label="Nose larger by"
          entry="decimal"
          unit={unit}
          hint="Minus for smaller"
          defaultValue={String(Number(nose.toFixed(4)))}
        />
        <Select
          name="held"
          label="Cut until"
          defaultValue={question.heldBy}
          options={[
            { value: 'nose', label: 'the nose is to size' },
            { value: 'length', label: 'the stop: cone length held' },
          ]}
        />
      </div>
      <div>
        <Button type="submit">Show</Button>
      </div>
    </form>
  );
}

/** What can be kept in mind: where the contact jumps, and what a tenth of a degree does. */
function Rules({ shape, unit }: { readonly shape: ConeShape; readonly unit: LengthUnit }) {
  const jump = angleErrorToLargeEndDeg(shape);
  const byStop = coneWithAngleError(shape, { angleErrorDeg: 0.1, heldBy: 'length' });
  const byNose = coneWithAngleError(shape, { angleErrorDeg: 0.1, heldBy: 'nose' });
  return (
    <div className="stack-tight">
      <p>
        {jump > 0
          ? `A blade ${degreesText(jump)} too wide moves the contact from the nose to the large end.`
          : 'At this angle the cone touches at its large end already.'}{' '}
        A tenth of a degree too wide: with the length held the nose comes out{' '}
        {measureText(Math.abs(byStop.noseChangeMm), unit)} smaller and sits{' '}
        {measureText(Math.abs(byStop.noseDeeperMm), unit)} deeper; with the nose to size the cone is{' '}
        {measureText(Math.abs(byNose.lengthChangeMm), unit)} shorter.
      </p>
      <p className="fine">
        Geometry of rigid bodies, from the row’s own figures. Angles and nose by the fitting maker’s manual. A
        blue check on a master seat shows what touches.
      </p>
    </div>
  );
}

function gapText(gapMm: number, unit: LengthUnit): string {
  return gapMm === 0 ? 'none: it touches here' : measureText(gapMm, unit);
}

function changeText(changeMm: number, unit: LengthUnit, more: string, less: string): string {
  if (Math.abs(changeMm) < 0.0005) return '';
  return `, ${measureText(Math.abs(changeMm), unit)} ${changeMm > 0 ? more : less}`;
}
