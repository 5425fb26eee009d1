import { dayText, volumeText } from '@/app/_shared/format';
import { Table } from '@/app/_shared/ui';
import { addDays, monthLabel } from '@/lib/calendar';
import type { FluidNeed } from '@/lib/outlook/fluid-needs';
import styles from './fluid.module.css';

const BOX = { width: 640, height: 200, left: 64, right: 8, top: 8, bottom: 26 };

/** The stock of one product through the year: the middle future as a line, eight futures in ten as a band; figures below. */
export function LevelFan({ need, today }: { readonly need: FluidNeed; readonly today: string }) {
  const { fan } = need;
  const topMl = niceTop(Math.max(1, ...fan.map(({ high }) => high)));
  const lastDay = fan.at(-1)?.day ?? 1;
  const x = (day: number) => BOX.left + (day / lastDay) * (BOX.width - BOX.left - BOX.right);
  const y = (ml: number) => BOX.top + (1 - ml / topMl) * (BOX.height - BOX.top - BOX.bottom);
  const line = (pick: (point: FluidNeed['fan'][number]) => number, points = fan) =>
    points.map((point) => `${x(point.day).toFixed(1)} ${y(pick(point)).toFixed(1)}`).join('L');
  const months = fan.filter((_, i) => i % 13 === 0);
  return (
    <figure className={styles.fan}>
      <svg
        viewBox={`0 0 ${BOX.width} ${BOX.height}`}
        role="img"
        aria-label={`Usable ${need.part.name} through the year`}
      >
        {[0, topMl / 2, topMl].map((ml) => (
          <g key={ml}>
            <path className={styles.grid} d={`M${BOX.left} ${y(ml)}H${BOX.width - BOX.right}`} />
            <text className={styles.tick} x={BOX.left - 6} y={y(ml) + 4} textAnchor="end">
              {volumeText(ml)}
            </text>
          </g>
        ))}
        {months.map(({ day }) => (
          <text
            key={day}
            className={styles.tick}
            x={x(day)}
            y={BOX.height - 6}
            textAnchor={day === 0 ? 'start' : day === lastDay ? 'end' : 'middle'}
          >
            {day === 0 ? 'today' : monthLabel(addDays(today, day))}
          </text>
        ))}
        <path
          className={styles.band}
          d={`M${line(({ high }) => high)}L${line(({ low }) => low, [...fan].reverse())}Z`}
        />
        <path className={styles.middle} d={`M${line(({ mid }) => mid)}`} />
      </svg>
      <figcaption className="fine">
        In date at the end of each week: middle future, and eight in ten. The plan’s lines first, then the
        pace of the last half year. A step down is a bottle whose day has come.
      </figcaption>
      <details>
        <summary>The same in figures</summary>
        <Table
          caption={`Usable ${need.part.name} by week`}
          phone="scroll"
          rows={fan.filter((_, i) => i % 4 === 0)}
          rowKey={({ day }) => String(day)}
          columns={[
            { key: 'day', header: 'Day', lead: true, cell: ({ day }) => dayText(addDays(today, day), today) },
            { key: 'low', header: 'Low', numeric: true, cell: ({ low }) => volumeText(low) },
            { key: 'mid', header: 'Middle', numeric: true, cell: ({ mid }) => volumeText(mid) },
            { key: 'high', header: 'High', numeric: true, cell: ({ high }) => volumeText(high) },
          ]}
        />
      </details>
    </figure>
  );
}

/** The next round figure above the highest level. */
function niceTop(ml: number): number {
  const step = 10 ** Math.floor(Math.log10(ml));
  return ([1, 2, 5, 10].find((times) => times * step >= ml) ?? 10) * step;
}
