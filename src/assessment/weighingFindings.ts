import { type WeighingRow, weighingsTable } from '../tables/weighings.ts';
import { toSi } from '../units.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';
import type { NamedPoint, OneWeighing, WeighedAircraft } from './weighingCheck.ts';

const armDoubt = toSi('length', 0.5, 'in'); // measured against the airframe table's wheels; common practice, no source
const sameWheel = toSi('length', 10, 'in'); // farther off it is another point: a jack pad

/** The airframe table's wheel a point stands on, where it is near one and yet not there. */
function strayPoints({ catalogue }: Context, points: readonly NamedPoint[]): NamedPoint[] {
  const wheels = [catalogue.airframe.mainWheelArm, catalogue.airframe.auxiliaryWheelArm].filter(
    (arm): arm is number => arm !== undefined,
  );
  return points.filter(({ arm }) => {
    const away = Math.min(...wheels.map((wheel) => Math.abs(wheel - arm)));
    return away > armDoubt && away < sameWheel;
  });
}

function eachFindings(
  context: Context,
  weighings: readonly OneWeighing[],
  rows: readonly WeighingRow[],
): Finding[] {
  const { display } = context;
  const finding = (
    gravity: Finding['gravity'],
    subject: string,
    text: string,
    source = 'weighings table',
  ): Finding => ({
    gravity,
    package: '',
    subject,
    source,
    text,
  });
  const customary = (['accuracy', 'armAccuracy'] as const).flatMap((key) => {
    const { label, fallback } = weighingsTable.fields[key];
    return rows.some(({ defaulted }) => defaulted.includes(key))
      ? [finding('note', label, 'not given for every point', fallback?.source)]
      : [];
  });
  return [
    ...weighings.flatMap(({ name, level, points, leftOut }): Finding[] => [
      ...(leftOut === undefined
        ? []
        : [
            finding(
              'check',
              `weighing ${name}`,
              `${leftOut}; it does not count`,
              level === false ? 'AC 43.13-1B 10-15c' : 'changes table',
            ),
          ]),
      ...(level === undefined
        ? [finding('check', `weighing ${name}`, 'not said whether it stood level: taken as level')]
        : []),
      ...strayPoints(context, points).map((point) =>
        finding(
          'check',
          `weighing ${name}, ${point.name}`,
          `arm ${display.text('arm', point.arm)} is not that of the airframe table’s wheel: measure again, both ways`,
        ),
      ),
    ]),
    ...customary,
  ];
}

function spreadFindings({ display }: Context, aircraft: WeighedAircraft): Finding[] {
  const { spread, counted } = aircraft;
  if (spread === undefined) {
    return [
      {
        gravity: 'check',
        package: '',
        subject: 'repeatability',
        source: 'weighings table',
        text: 'weighed once: lift it off the scales, set it down and weigh again',
      },
    ];
  }
  const most = Math.SQRT2 * Math.max(...counted.map(({ weightHalfWidth }) => weightHalfWidth));
  const mostCg = Math.SQRT2 * Math.max(...counted.map(({ cgHalfWidth }) => cgHalfWidth));
  if (spread.weight <= most && spread.cg <= mostCg) return [];
  return [
    {
      gravity: 'check',
      package: '',
      subject: 'repeatability',
      shown: 'weight',
      value: spread.weight,
      limit: most,
      source: '√2 times what the scales and arms may be off',
      text: `the weighings differ by more than that, ${display.text('arm', spread.cg)} in CG: something changed between them, or was read wrongly`,
    },
  ];
}

/** What is to be looked at on the scales and between one weighing and the next. */
export const weighingFindings = (
  context: Context,
  weighings: readonly OneWeighing[],
  rows: readonly WeighingRow[],
  aircraft: WeighedAircraft | undefined,
): Finding[] => [
  ...eachFindings(context, weighings, rows),
  ...(aircraft ? spreadFindings(context, aircraft) : []),
];
