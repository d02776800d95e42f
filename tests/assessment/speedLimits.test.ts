/**
 * Level speeds against V_NO and V_NE.
 *
 * The plain aircraft, worked elsewhere (see flight.test.ts): 62.406 m/s at full throttle at sea level, 58.517 m/s at 75 %
 * and 8,000 ft. Where a height matters the engineering is asked for the speed there. At sea level calibrated is true.
 */
import { describe, expect, test } from 'vitest';
import { airAt } from '../../src/engineering/aircraftInFlight.ts';
import { calibratedFromTrue } from '../../src/engineering/airspeed.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { fromSi, toSi } from '../../src/units.ts';
import { sample } from '../sample.ts';
import { comparisonOf, flightOf, plainAircraft, withAttribute } from './flightFixture.ts';

const findingsOf = (grids: TableGrids, subject: string) =>
  comparisonOf(grids).findings.filter((finding) => finding.subject === subject);
const fast = (grids: TableGrids) => [...findingsOf(grids, 'VNO'), ...findingsOf(grids, 'VNE')];

/** The plain aircraft with other limits; empty cells take one away. */
function limited(limits: Readonly<Record<string, Cell>>, grids = plainAircraft): TableGrids {
  return Object.entries(limits).reduce(
    (changed, [name, value]) =>
      withAttribute(changed, 'airframe', name, value, typeof value === 'number' ? 'm/s' : ''),
    grids,
  );
}

const speedAt = (setting: number, feet: number) => {
  const level = flightOf(plainAircraft, 'Elm').levelAt(setting, toSi('height', feet, 'ft'));
  return level.possible ? level.trueAirspeed : Number.NaN;
};

test('within them nothing is said', () => {
  expect(fast(plainAircraft)).toEqual([]);
});

describe('VNO, calibrated', () => {
  test('60: beyond at full throttle alone, a note for the throttle', () => {
    const [finding, ...others] = fast(limited({ VNO: 60 }));
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      ...{ gravity: 'note', package: 'Elm', shown: 'speed', limit: 60 },
      source: 'airframe table: VNO, calibrated airspeed',
      text: 'level flight at full throttle exceeds it at sea level already, most at 0 ft',
    });
    expect(finding?.value).toBeCloseTo(62.406, 2);
  });

  test('50: the cruise setting itself is beyond, most at sea level, where a power gives the most pressure', () => {
    const [finding, ...others] = fast(limited({ VNO: 50 }));
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      gravity: 'check',
      text: 'level flight at 75 % power exceeds it at sea level already, most at 0 ft',
    });
    expect(finding?.value).toBeCloseTo(speedAt(0.75, 0), 9);
  });

  test('a setting too low to stay up leaves full throttle to judge', () => {
    const slow = withAttribute(limited({ VNO: 60 }), 'mission', 'cruise power', 30, '%');
    expect(flightOf(slow, 'Elm').levelAt(0.3, 0).possible).toBe(false);
    expect(fast(slow).map(({ gravity }) => gravity)).toEqual(['note']);
  });
});

describe('VNE', () => {
  test('true, 57: beyond at 75 % from 6,000 ft, most where full throttle gives no more than that', () => {
    expect(speedAt(0.75, 4000)).toBeLessThan(57);
    expect(speedAt(0.75, 6000)).toBeGreaterThan(57);
    const [finding, ...others] = findingsOf(limited({ VNO: 50, VNE: 57 }), 'VNE');
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      ...{ gravity: 'stop', package: 'Elm', limit: 57 },
      source: 'airframe table: VNE, true airspeed',
      text: 'level flight at 75 % power exceeds it from 6,000 ft up, most at 8,000 ft',
    });
    expect(finding?.value).toBeCloseTo(58.517, 2);
  });

  test('true, 60: within reach of full throttle alone it is a stop all the same', () => {
    const [finding] = findingsOf(limited({ VNO: 50, VNE: 60 }), 'VNE');
    expect(finding).toMatchObject({ gravity: 'stop', text: expect.stringContaining('full throttle') });
    expect(finding?.value).toBeCloseTo(62.406, 2);
  });

  test('calibrated, 58: no cruise comes there; full throttle does, and its calibrated speed is shown', () => {
    const grids = limited({ VNO: 50, VNE: 58, 'VNE is': 'calibrated airspeed' });
    const [finding, ...others] = findingsOf(grids, 'VNE');
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      ...{ gravity: 'stop', limit: 58 },
      source: 'airframe table: VNE, calibrated airspeed',
      text: 'level flight at full throttle exceeds it at sea level already, most at 0 ft',
    });
    expect(finding?.value).toBeCloseTo(62.406, 2);
  });

  test('not said which: taken as true, with a check', () => {
    const unsaid = findingsOf(limited({ VNO: 50, VNE: 58, 'VNE is': '' }), 'VNE');
    expect(unsaid).toMatchObject([
      {
        ...{ gravity: 'check', package: '', source: 'airframe table' },
        text: 'calibrated or true is not said: taken as true, the more careful',
      },
      { gravity: 'stop', package: 'Elm', source: 'airframe table: VNE, true airspeed' },
    ]);
  });

  test('Clover of the sample flies beyond its VNE at height and says so', () => {
    const finding = findingsOf(sample('sanderling'), 'VNE').find((each) => each.package === 'Clover');
    expect(finding).toMatchObject({ gravity: 'stop', shown: 'speed' });
    expect(finding!.value!).toBeGreaterThan(finding!.limit!);
    expect(fromSi('speed', finding!.limit!, 'km/h')).toBeCloseTo(265, 9);
    expect(finding!.text).toMatch(/exceeds it from [\d,]+ (m|ft) up/);
  });
});

describe('a turbocharged engine, full power up to 4,000 m', () => {
  const turbocharged = withAttribute(plainAircraft, 'packages', 'critical altitude', 4000, 'm', 'Elm');
  const at = (altitude: number) => {
    const level = flightOf(turbocharged, 'Elm').levelAt('continuous', altitude);
    return level.possible ? level.trueAirspeed : Number.NaN;
  };

  test('true airspeed is greatest at its critical altitude, and that is what VNE meets', () => {
    const [finding] = findingsOf(limited({ VNO: 50, VNE: 66 }, turbocharged), 'VNE');
    expect(at(0)).toBeLessThan(66);
    expect(finding?.value).toBeCloseTo(at(4000), 9);
    expect(finding?.text).toMatch(/most at 13,100 ft$/);
  });

  test('calibrated airspeed is not: VNO is exceeded most at sea level', () => {
    const [finding] = findingsOf(limited({ VNO: 60 }, turbocharged), 'VNO');
    expect(calibratedFromTrue(at(4000), 4000, airAt(4000).temperature)).toBeLessThan(at(0));
    expect(finding?.value).toBeCloseTo(at(0), 9);
  });
});

describe('one that is not given is not looked at, and said', () => {
  const text = 'not given: no speed is checked against it';
  const missing = { gravity: 'check', package: '', text };

  test('neither', () => {
    expect(fast(limited({ VNO: '', VNE: '', 'VNE is': '' }))).toMatchObject([missing, missing]);
  });

  test('no VNE: VNO is checked', () => {
    const grids = limited({ VNO: 60, VNE: '', 'VNE is': '' });
    expect(findingsOf(grids, 'VNE')).toMatchObject([missing]);
    expect(findingsOf(grids, 'VNO')).toMatchObject([{ gravity: 'note', limit: 60 }]);
  });

  test('no VNO: VNE is checked', () => {
    const grids = limited({ VNO: '', VNE: 60 });
    expect(findingsOf(grids, 'VNO')).toMatchObject([missing]);
    expect(findingsOf(grids, 'VNE')).toMatchObject([{ gravity: 'stop', limit: 60 }]);
  });
});
