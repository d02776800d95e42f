/** Every search and iteration of the engineering and the assessment, and how it ends. */

interface Search {
  readonly file: string;
  readonly what: string;
  /**
   * `bracket`: a root between two signs, or a maximum within an interval: always ends (solve.ts), refused where the signs are
   * not there; `counted`: each round takes one of finitely many things, or a step of fixed size; `halved`: so many halvings,
   * the last that goes is the answer; `settles`: rounds until two agree, which they need not
   */
  readonly ends: 'bracket' | 'counted' | 'halved' | 'settles';
}

const assessment = 'src/assessment';
const engineering = 'src/engineering';

export const searches: readonly Search[] = [
  { file: `${engineering}/solve.ts`, what: 'root of a function', ends: 'bracket' },
  { file: `${engineering}/solve.ts`, what: 'maximum of a function', ends: 'bracket' },
  { file: `${engineering}/levelFlight.ts`, what: 'level speed', ends: 'bracket' },
  { file: `${engineering}/levelFlight.ts`, what: 'a speed with thrust to spare', ends: 'bracket' },
  { file: `${engineering}/climb.ts`, what: 'best rate of climb', ends: 'bracket' },
  { file: `${engineering}/climb.ts`, what: 'best angle of climb', ends: 'bracket' },
  { file: `${engineering}/climb.ts`, what: 'ceiling', ends: 'bracket' },
  { file: `${engineering}/climb.ts`, what: 'slices of a climb', ends: 'counted' },
  { file: `${engineering}/climb.ts`, what: 'where a climb gives up', ends: 'bracket' },
  { file: `${engineering}/radiator.ts`, what: 'NTU of an effectiveness', ends: 'bracket' },
  { file: `${engineering}/coolingFlow.ts`, what: 'cooling airflow', ends: 'bracket' },
  { file: `${engineering}/coolingLimit.ts`, what: 'least airflow for a limit', ends: 'bracket' },
  { file: `${engineering}/coolingLimit.ts`, what: 'highest outside temperature', ends: 'bracket' },
  { file: `${engineering}/loading.ts`, what: 'stations filled', ends: 'counted' },
  { file: `${engineering}/convexPolygon.ts`, what: 'edges merged', ends: 'counted' },
  {
    file: `${assessment}/scanHeights.ts`,
    what: 'where a climb in which cooling is judged ends',
    ends: 'bracket',
  },
  {
    file: `${assessment}/scanHeights.ts`,
    what: 'where the speed of best rate becomes the stated one',
    ends: 'bracket',
  },
  { file: `${assessment}/testLoading.ts`, what: 'test loading on a limit', ends: 'bracket' },
  { file: `${assessment}/missionChanges.ts`, what: 'least part of a change', ends: 'halved' },
  { file: `${assessment}/missionChanges.ts`, what: 'ballast for the mission', ends: 'settles' },
  { file: `${assessment}/balanceCures.ts`, what: 'ballast, battery moved', ends: 'settles' },
  { file: `${assessment}/balanceCures.ts`, what: 'ballast no heavier than it must be', ends: 'bracket' },
  { file: `${assessment}/missionLegs.ts`, what: 'fuel and its own weight', ends: 'settles' },
  { file: `${assessment}/aircraft.ts`, what: 'speed and cooling drag', ends: 'settles' },
  { file: `${assessment}/polarFit.ts`, what: 'drag and propeller', ends: 'settles' },
  { file: `${assessment}/polarFit.ts`, what: 'drag and cooling of the known flights', ends: 'settles' },
];
