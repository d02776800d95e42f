import type { FieldUnit } from '../tables/field.ts';
import type { UnitOf } from '../tables/writeTable.ts';
import type { Display } from './display.ts';

/** Units for rows that go back into tables: those the workbook shows its results in. */
export function tableUnits(display: Display): UnitOf {
  const chosen: Partial<Record<FieldUnit, string>> = {
    mass: display.unit('weight'),
    length: display.unit('arm'),
    volume: display.unit('fuel'),
    fuelFlow: display.unit('fuelFlow'),
    power: display.unit('power'),
    speed: display.unit('speed'),
    height: display.unit('height'),
    climb: display.unit('climb'),
    bsfc: display.unit('bsfc'),
  };
  return ({ unit, label, customaryUnit }) => {
    if (unit === 'temperature' && !/OAT/.test(label)) return display.unit('engineTemperature');
    return (unit && chosen[unit]) ?? customaryUnit;
  };
}
