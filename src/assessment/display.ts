import type { Airframe } from '../tables/airframe.ts';
import type { Cell } from '../tables/cell.ts';
import { fromSi, type QuantityKind } from '../units.ts';

/** A kind of result: the units it is shown in, and the step it is rounded to in each, because digits carry meaning. */
interface Presentation {
  readonly kind: QuantityKind;
  readonly units: (choices: UnitChoices) => string;
  readonly step: Readonly<Record<string, number>> & { readonly otherwise: number };
}

/** The units a workbook has chosen for its results. */
export interface UnitChoices {
  readonly weight: 'lb' | 'kg';
  readonly length: 'in' | 'mm' | 'cm' | 'm';
  readonly fuel: 'US gal' | 'L';
  readonly power: 'hp' | 'kW' | 'PS';
  readonly speed: 'kt' | 'mph' | 'km/h';
  readonly height: 'ft' | 'm';
}

const metric = (choices: UnitChoices) => choices.weight === 'kg';
const fixed = (unit: string) => () => unit;

/** How every kind of result is shown. */
const presentations = {
  weight: { kind: 'mass', units: (u) => u.weight, step: { otherwise: 0.1 } },
  payload: { kind: 'mass', units: (u) => u.weight, step: { otherwise: 1 } },
  arm: { kind: 'length', units: (u) => u.length, step: { mm: 1, m: 0.001, otherwise: 0.1 } },
  moment: {
    kind: 'moment',
    units: (u) => (metric(u) ? 'kg·m' : 'lb·in'),
    step: { kg·m: 0.1, otherwise: 10 },
  },
  fuel: { kind: 'volume', units: (u) => u.fuel, step: { L: 1, otherwise: 0.1 } },
  fuelFlow: { kind: 'fuelFlow', units: (u) => `${u.fuel}/h`, step: { otherwise: 0.1 } },
  bsfc: {
    kind: 'bsfc',
    units: (u) => (metric(u) ? 'g/kWh' : 'lb/hp·h'),
    step: { 'g/kWh': 1, otherwise: 0.001 },
  },
  power: { kind: 'power', units: (u) => u.power, step: { otherwise: 1 } },
  speed: { kind: 'speed', units: (u) => u.speed, step: { otherwise: 1 } },
  distance: {
    kind: 'distance',
    units: (u) => ({ kt: 'nmi', mph: 'mi', 'km/h': 'km' })[u.speed],
    step: { otherwise: 1 },
  },
  height: { kind: 'height', units: (u) => u.height, step: { ft: 100, otherwise: 50 } },
  runway: { kind: 'height', units: (u) => u.height, step: { ft: 10, otherwise: 5 } },
  climb: {
    kind: 'climb',
    units: (u) => (u.height === 'ft' ? 'ft/min' : 'm/s'),
    step: { 'ft/min': 10, otherwise: 0.1 },
  },
  engineTemperature: { kind: 'temperature', units: (u) => (metric(u) ? '°C' : '°F'), step: { otherwise: 1 } },
  temperatureMargin: {
    kind: 'temperatureDifference',
    units: (u) => (metric(u) ? '°C' : '°F'),
    step: { otherwise: 1 },
  },
  oat: { kind: 'temperature', units: fixed('°C'), step: { otherwise: 1 } },
  hours: { kind: 'time', units: fixed('h'), step: { otherwise: 0.1 } },
  wholeHours: { kind: 'time', units: fixed('h'), step: { otherwise: 1 } },
  minutes: { kind: 'time', units: fixed('min'), step: { otherwise: 1 } },
  weeks: { kind: 'days', units: fixed('weeks'), step: { otherwise: 1 } },
  percent: { kind: 'fraction', units: fixed('%'), step: { otherwise: 1 } },
  torque: { kind: 'torque', units: (u) => (metric(u) ? 'N·m' : 'lbf·ft'), step: { otherwise: 1 } },
  force: { kind: 'force', units: (u) => (metric(u) ? 'N' : 'lbf'), step: { otherwise: 1 } },
  opening: { kind: 'openingArea', units: (u) => (metric(u) ? 'cm²' : 'in²'), step: { otherwise: 1 } },
  dragArea: {
    kind: 'area',
    units: (u) => (metric(u) ? 'm²' : 'ft²'),
    step: { 'm²': 0.001, otherwise: 0.01 },
  },
  pressure: {
    kind: 'pressure',
    units: (u) => (metric(u) ? 'Pa' : 'inH2O'),
    step: { Pa: 10, otherwise: 0.1 },
  },
  heatFlow: {
    kind: 'heatFlow',
    units: (u) => (metric(u) ? 'kW' : 'Btu/min'),
    step: { kW: 0.1, otherwise: 10 },
  },
  massFlow: {
    kind: 'massFlow',
    units: (u) => (metric(u) ? 'kg/s' : 'lb/min'),
    step: { 'kg/s': 0.01, otherwise: 1 },
  },
  current: { kind: 'current', units: fixed('A'), step: { otherwise: 1 } },
  rpm: { kind: 'rotation', units: fixed('rpm'), step: { otherwise: 10 } },
  ratio: { kind: 'number', units: fixed(''), step: { otherwise: 0.01 } },
  count: { kind: 'number', units: fixed(''), step: { otherwise: 1 } },
} as const satisfies Record<string, Presentation>;

/** What a result is, for showing it: a kind above, or money. */
export type Shown = keyof typeof presentations | 'money' | 'moneyPerHour';

/** Shows SI results in the workbook's units. */
export interface Display {
  readonly units: UnitChoices;
  readonly unit: (shown: Shown) => string;
  /** the number in that unit, rounded to its step */
  readonly cell: (shown: Shown, value: number | undefined) => Cell;
  /** the number in that unit, ten times as fine: a point of a curve */
  readonly point: (shown: Shown, value: number) => number;
  /** the number in words, without its unit */
  readonly number: (shown: Shown, value: number) => string;
  /** number and unit in words, for findings; rounded down or up where only that stays true */
  readonly text: (shown: Shown, value: number, rounding?: Rounding) => string;
}

type Rounding = 'floor' | 'round' | 'ceil';

/** Rounds to a step without leaving the tail of a binary fraction behind. */
export function roundedTo(value: number, step: number, rounding: Rounding = 'round'): number {
  const decimals = Math.max(0, Math.ceil(-Math.log10(step)));
  return Number((Math[rounding](value / step) * step).toFixed(decimals)); // which gives −0 no sign
}

/** Thousands separated, a true minus sign, as many decimals as the step has. */
export function numberText(value: number, step: number): string {
  const decimals = Math.max(0, Math.ceil(-Math.log10(step)));
  const [whole = '', fraction] = Math.abs(value).toFixed(decimals).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  const sign = value < 0 ? '\u2212' : '';
  return `${sign}${grouped}${fraction === undefined ? '' : `.${fraction}`}`;
}

/** The units an airframe table asks for. */
export function unitChoices(airframe: Airframe): UnitChoices {
  return {
    weight: airframe.weightUnit,
    length: airframe.lengthUnit,
    fuel: airframe.fuelUnit,
    power: airframe.powerUnit,
    speed: airframe.speedUnit,
    height: airframe.heightUnit,
  };
}

export function displayIn(units: UnitChoices, currency: string): Display {
  const scale = (shown: Shown) => {
    if (shown === 'money' || shown === 'moneyPerHour') {
      const unit = shown === 'money' ? currency : `${currency}/h`;
      return { unit, step: 1, convert: (value: number) => value };
    }
    const presentation: Presentation = presentations[shown];
    const unit = presentation.units(units);
    return {
      unit,
      step: presentation.step[unit] ?? presentation.step.otherwise,
      convert: (value: number) => fromSi(presentation.kind, value, unit),
    };
  };
  const numberOf = (shown: Shown, value: number, rounding: Rounding = 'round') => {
    const { step, convert } = scale(shown);
    return numberText(roundedTo(convert(value), step, rounding), step);
  };
  return {
    units,
    unit: (shown) => scale(shown).unit,
    cell: (shown, value) => {
      if (value === undefined) return null;
      const { step, convert } = scale(shown);
      return roundedTo(convert(value), step);
    },
    point: (shown, value) => {
      const { step, convert } = scale(shown);
      return roundedTo(convert(value), step / 10);
    },
    number: numberOf,
    text: (shown, value, rounding) => `${numberOf(shown, value, rounding)} ${scale(shown).unit}`.trimEnd(),
  };
}
