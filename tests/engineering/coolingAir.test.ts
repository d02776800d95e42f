import { describe, expect, test } from 'vitest';
import {
  coolingAirflow,
  coolingExitArea,
  coolingHeat,
  coolingInletArea,
  coolingPressureAvailable,
  heatedDensity,
  slipstreamPressure,
} from '../../src/engineering/coolingAir.ts';
import { toSi } from '../../src/units.ts';

describe('worked by hand', () => {
  test('160 hp, 0.55 of it into the coolant: 88 hp of 42.41 Btu/min', () => {
    const heat = coolingHeat(toSi('power', 160, 'hp'), 0.55);
    expect(Math.abs(heat / toSi('heatFlow', 1, 'Btu/min') - 3732)).toBeLessThan(1);
    // 3,732 Btu/min into air of 0.24 Btu/lb·°F warmed by 100 °F; 0.24 is rounded, hence 0.1 %
    const airflow = coolingAirflow(heat, toSi('temperatureDifference', 100, '°F'));
    expect(Math.abs(airflow / toSi('massFlow', 155.5, 'lb/min') - 1)).toBeLessThan(1e-3);
  });

  test('100 kt at sea level: q = 1,621.0 Pa = 6.508 inH2O', () => {
    const speed = toSi('speed', 100, 'kt'); // 51.444 m/s
    expect(coolingPressureAvailable(speed, 1.225, 0, 1, 0)).toBeCloseTo(1621.0, 1);
    expect(coolingPressureAvailable(speed, 1.225, 0, 1, 0) / toSi('pressure', 1, 'inH2O')).toBeCloseTo(
      6.508,
      3,
    );
    expect(coolingPressureAvailable(speed, 1.225, 0, 0.8, 0)).toBeCloseTo(1296.8, 1);
    // 0.8 (1,621 + 200) + 0.1 × 1,621
    expect(coolingPressureAvailable(speed, 1.225, 200, 0.8, -0.1)).toBeCloseTo(1618.9, 1);
  });

  test('slipstream: 2,000 N over 2.5 m², 0.35 of it', () => {
    expect(slipstreamPressure(0.35, 2000, 2.5)).toBeCloseTo(280, 9);
    // standing still it is all there is
    expect(coolingPressureAvailable(0, 1.225, 280, 0.8, -0.1)).toBeCloseTo(224, 9);
  });

  test('openings', () => {
    expect(heatedDensity(1.2, 300, 60)).toBeCloseTo(1.0, 12);
    expect(coolingInletArea(1.2, 50, 1.2, 0.35)).toBeCloseTo(1 / 17.5, 12);
    expect(coolingExitArea(1.2, 500, 1.0, 0.9)).toBeCloseTo(0.0421637, 7); // 1.2 / (0.9 √1000)
  });
});
