/**
 * Oswald efficiency and the propeller's efficiency in the climb from more than one measured flight.
 *
 * A flight of an aircraft whose values are given is entered as if it had been measured: the values must come back.
 */
import { describe, expect, test } from 'vitest';
import { aircraftWith, coolingDragArea } from '../../src/assessment/aircraft.ts';
import { contextOf, packageNamed } from '../../src/assessment/context.ts';
import { streamsOf } from '../../src/assessment/coolingStreams.ts';
import { engineOf } from '../../src/assessment/engine.ts';
import { airOf } from '../../src/assessment/knownAir.ts';
import { type Flown, fitPolar } from '../../src/assessment/polarFit.ts';
import { type AircraftInFlight, airAt } from '../../src/engineering/aircraftInFlight.ts';
import { rateOfClimb } from '../../src/engineering/climb.ts';
import { withDragArea } from '../../src/engineering/dragPolar.ts';
import { dragOfKnownFlight, polarThroughPoints } from '../../src/engineering/knownFlight.ts';
import { powerRequired } from '../../src/engineering/levelFlight.ts';
import { climbAnchorSpeed } from '../../src/engineering/propellerEfficiency.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import type { KnownPoint } from '../../src/tables/knownPoints.ts';
import { toSi } from '../../src/units.ts';
import { sample } from '../sample.ts';
import {
  catalogueOf,
  comparisonOf,
  flightOf,
  plainAircraft,
  withAttribute,
  withRows,
} from './flightFixture.ts';

const godwit = sample('godwit');

/** A row of the plain aircraft's table at 1,000 kg at sea level. */
const point = (condition: string, kilowatts: number, airspeed: number, rate: Cell = '') => [
  ...['Elm', condition, kilowatts, 1000, 0, '', airspeed, rate, ''],
];

const findingsOf = (grids: TableGrids, subject: string) =>
  comparisonOf(grids).findings.filter((finding) => finding.subject === subject);

describe('given values come back', () => {
  test.each([0.56, 0.7, 0.85])('a second level flight gives e back: %d', (e) => {
    const truth = flightOf(withAttribute(plainAircraft, 'airframe', 'Oswald efficiency', e), 'Elm');
    const power = powerRequired(truth.aircraft, airAt(3000), 1000, 42);
    const grids = withRows(plainAircraft, 'known points', [
      'Elm',
      'level flight',
      power / 1000,
      1000,
      3000,
      '',
      42,
      '',
      '',
    ]);
    expect(flightOf(grids, 'Elm').aircraft.dragPolar.spanEfficiency).toBeCloseTo(e, 4);
  });

  test.each([0.56, 0.7, 0.85])('so does a climb: %d', (e) => {
    const truth = flightOf(withAttribute(plainAircraft, 'airframe', 'Oswald efficiency', e), 'Elm');
    const rate = rateOfClimb(truth.aircraft, 'continuous', airAt(0), 1000, 39);
    const grids = withRows(plainAircraft, 'known points', ['Elm', 'climb', 110, 1000, 0, '', 39, rate, '']);
    expect(flightOf(grids, 'Elm').aircraft.dragPolar.spanEfficiency).toBeCloseTo(e, 4);
  });

  test('with two level flights the climb gives the propeller’s efficiency in the climb', () => {
    const truth = flightOf(
      withAttribute(plainAircraft, 'airframe', 'propeller efficiency climb', 0.7),
      'Elm',
    );
    // The other level flight at a speed where k does not depend on its climb value
    const power = powerRequired(truth.aircraft, airAt(0), 1500, 62);
    const climbSpeed = 38;
    const rate = rateOfClimb(truth.aircraft, 'continuous', airAt(0), 1000, climbSpeed);
    const grids = withRows(
      plainAircraft,
      'known points',
      ['Elm', 'level flight', power / 1000, 1500, 0, '', 62, '', ''],
      ['Elm', 'climb', 110, 1000, 0, '', climbSpeed, rate, ''],
    );
    const { aircraft } = flightOf(grids, 'Elm');
    const expected = truth.aircraft.propellerEfficiency(climbSpeed);
    expect(aircraft.propellerEfficiency(climbSpeed)).toBeCloseTo(expected, 4);
    expect(rateOfClimb(aircraft, 'continuous', airAt(0), 1000, climbSpeed)).toBeCloseTo(rate, 4);
  });

  test('so it does where the second level flight depends on that efficiency too', () => {
    const truth = flightOf(
      withAttribute(plainAircraft, 'airframe', 'propeller efficiency climb', 0.7),
      'Elm',
    );
    // Where the climb value of k is put when no climb is measured: between it and cruise k is a straight line in both
    const climbSpeed = climbAnchorSpeed(truth.aircraft.dragPolar, 15, 1000);
    const power = powerRequired(truth.aircraft, airAt(0), 1000, 45);
    const rate = rateOfClimb(truth.aircraft, 'continuous', airAt(0), 1000, climbSpeed);
    const climb = (error: number) => point('climb', 110, climbSpeed, rate + error);
    const slow = point('level flight', power / 1000, 45);
    // Two climbs that err by as much either way tell the same
    for (const climbs of [[climb(0)], [climb(0.01), climb(-0.01)]]) {
      const { aircraft } = flightOf(withRows(plainAircraft, 'known points', slow, ...climbs), 'Elm');
      expect(aircraft.propellerEfficiency(climbSpeed)).toBeCloseTo(0.7, 5);
      expect(aircraft.propellerEfficiency(45)).toBeCloseTo(truth.aircraft.propellerEfficiency(45), 5);
      expect(aircraft.dragPolar.spanEfficiency).toBeCloseTo(0.7, 5);
    }
  });

  // At 62 m/s k has its cruise value whatever e is
  test.each([0.45, 0.95])('an e outside 0.5 to 0.9 is not believed: %d', (e) => {
    const truth = flightOf(withAttribute(plainAircraft, 'airframe', 'Oswald efficiency', e), 'Elm');
    const power = powerRequired(truth.aircraft, airAt(0), 1500, 62);
    const heavy = ['Elm', 'level flight', power / 1000, 1500, 0, '', 62, '', ''];
    const grids = withRows(plainAircraft, 'known points', heavy);
    expect(flightOf(grids, 'Elm').aircraft.dragPolar.spanEfficiency).toBe(0.7);
    const words = `do not belong together: e would be ${e}; the e of the airframe table is used`;
    expect(findingsOf(grids, 'known flown points')).toMatchObject([
      { gravity: 'check', text: expect.stringContaining(words) },
    ]);
  });

  test('a climb that cannot belong to the level flight is said, and e stays what the airframe table has', () => {
    const grids = withRows(plainAircraft, 'known points', ['Elm', 'climb', 110, 1000, 0, '', 39, 6, '']);
    expect(flightOf(grids, 'Elm').aircraft.dragPolar.spanEfficiency).toBe(0.7);
    expect(findingsOf(grids, 'known flown points')[0]).toMatchObject({
      gravity: 'check',
      text: expect.stringMatching(/do not belong together: induced drag factor .* must be above 0/),
    });
  });
});

test('drag, propeller and cooling of the measured flights agree with each other in the end', () => {
  const catalogue = catalogueOf(godwit);
  const context = contextOf(catalogue);
  const { airframe, knownPoints } = catalogue;
  const engine = packageNamed(catalogue, 'Rowan');
  const curves = engineOf(context, engine);
  const row = knownPoints[0] as KnownPoint;
  const flown = (changes: Partial<KnownPoint>, trueAirspeed: number, climb = 0): Flown => {
    const point = { ...row, ...changes };
    return { point, trueAirspeed, rateOfClimb: climb, air: airOf(point), engine, curves };
  };
  const level = flown({}, row.airspeed as number);
  const climb = flown({ power: toSi('power', 175, 'hp'), altitude: 1000 }, 45, 4.5);
  const { dragPolar, propeller, converged, doubt } = fitPolar(context, {
    level,
    otherLevels: [],
    climbs: [climb],
    optionsDragArea: 0,
  });
  expect([converged, doubt]).toEqual([true, undefined]);
  const areaAt = (aircraft: AircraftInFlight, { point, air, trueAirspeed }: Flown) => {
    const streams = streamsOf(context.cooling.of('Rowan'), engine, aircraft);
    return coolingDragArea(streams, aircraft, engine, air, trueAirspeed, point.power);
  };
  const rough = aircraftWith(airframe, engine, curves, propeller, dragPolar); // cooling does not depend on the polar
  const points = [level, climb].map((each) =>
    dragOfKnownFlight(
      {
        shaftPower: each.point.power,
        trueAirspeed: each.trueAirspeed,
        density: each.air.density,
        mass: each.point.weight,
        propellerDiameter: engine.propellerDiameter,
        rateOfClimb: each.rateOfClimb,
        dragArea: areaAt(rough, each),
      },
      propeller.efficiency(each.trueAirspeed),
    ),
  );
  const { wingArea, wingSpan, maximumTakeoffWeight } = airframe;
  const again = polarThroughPoints(points, wingArea, wingSpan ** 2 / wingArea);
  expect(dragPolar.zeroLiftDragCoefficient / again.zeroLiftDragCoefficient).toBeCloseTo(1, 6);
  expect(dragPolar.spanEfficiency / again.spanEfficiency).toBeCloseTo(1, 6);
  const total = withDragArea(dragPolar, areaAt(rough, level), wingArea);
  expect(propeller.climbSpeed).toBeCloseTo(climbAnchorSpeed(total, wingArea, maximumTakeoffWeight), 5);
});
