import { fromSi, type QuantityKind, toSi, unitNamed, unitsOf } from '../units.ts';
import { type Cell, isBlank, isDate, isErrorText, nameKey, negligible, numberIn, plain } from './cell.ts';

/** A value the table did not give, where it comes from, and whether leaving it out deserves a word. */
export interface Fallback<T> {
  readonly value: T;
  readonly source: string;
}

/** Outcome of reading one cell. */
export type Reading<T> = { readonly value: T } | { readonly expected: string };

/** A kind of quantity, an amount of money, or money for a volume of fuel. */
export type FieldUnit = QuantityKind | 'currency' | 'currency per volume';

/** One column or attribute of a table: how it is called, what it means and how its cell is read. */
export interface Field<T> {
  readonly label: string;
  readonly help: string;
  readonly required: boolean;
  /** Part of what names a row; two rows may not share it. */
  readonly key: boolean;
  readonly fallback: Fallback<NonNullable<T>> | undefined;
  /** The kind of unit that must stand beside the value; undefined where there is none. */
  readonly unit: FieldUnit | undefined;
  /** The unit a new sheet starts with. */
  readonly customaryUnit: string;
  /** What may be chosen, for a drop-down; tick boxes are TRUE or FALSE. */
  readonly choices: readonly string[] | undefined;
  readonly read: (cell: Cell, unit: string) => Reading<NonNullable<T>>;
}

export type Fields = Readonly<Record<string, Field<unknown>>>;
export type ValuesOf<F extends Fields> = { readonly [K in keyof F]: F[K] extends Field<infer T> ? T : never };

interface Presence<T> {
  help: string;
  required?: boolean;
  key?: boolean;
  fallback?: Fallback<T>;
}
type Given<T, O> = O extends { required: true } | { fallback: Fallback<T> } ? T : T | undefined;

function field<T, O extends Presence<T>>(
  label: string,
  options: O,
  rest: Pick<Field<T>, 'read'> & Partial<Pick<Field<T>, 'unit' | 'choices' | 'customaryUnit'>>,
): Field<Given<T, O>> {
  return {
    label,
    help: options.help,
    required: options.required ?? false,
    key: options.key ?? false,
    fallback: options.fallback,
    unit: undefined,
    choices: undefined,
    customaryUnit: '',
    ...rest,
  } as Field<Given<T, O>>;
}

/** Limits of a number, in the unit `in`. */
interface Limits {
  in?: string;
  above?: number;
  atLeast?: number;
  atMost?: number;
}

const trimmed = (value: number) => Number(value.toPrecision(6)).toString();

function limitsBroken(kind: QuantityKind, value: number, unit: string, limits: Limits): string | undefined {
  const given = limits.in ?? unitsOf(kind)[0] ?? '';
  const here = (limit: number) => `${trimmed(fromSi(kind, toSi(kind, limit, given), unit))} ${unit}`.trim();
  const si = toSi(kind, value, unit);
  const slack = (limit: number) => Math.abs(toSi(kind, limit, given)) * 1e-12;
  const { above, atLeast, atMost } = limits;
  if (above !== undefined && value <= fromSi(kind, toSi(kind, above, given), unit) + negligible)
    return `a number above ${here(above)}`;
  if (atLeast !== undefined && si < toSi(kind, atLeast, given) - slack(atLeast)) {
    return `a number of at least ${here(atLeast)}`;
  }
  if (atMost !== undefined && si > toSi(kind, atMost, given) + slack(atMost)) {
    return `a number of at most ${here(atMost)}`;
  }
  return undefined;
}

/** The greatest share a percentage field holds, heat over shaft power. */
const greatestShare = 1.5;

/**
 * True where a number beside "%" can be two things: a cell shown as 25 % arrives as 0.25, which also is a quarter of one
 * per cent. Where the limits exclude a hundred times the number, it is what it says.
 */
function isAmbiguous(kind: QuantityKind, value: number, unit: string, limits: Limits): boolean {
  return (
    unit === '%' &&
    value !== 0 &&
    Math.abs(value) <= greatestShare &&
    limitsBroken(kind, 100 * value, unit, limits) === undefined
  );
}

/**
 * A quantity: read in whatever unit of its kind the table names, kept in SI. An ambiguous percentage is refused; it can
 * be written with the unit "fraction".
 */
export function quantity<O extends Presence<number> & Limits>(
  kind: QuantityKind,
  label: string,
  options: O,
): Field<Given<number, O>> {
  return field<number, O>(label, options, {
    unit: kind,
    customaryUnit: options.in ?? unitsOf(kind)[0] ?? '',
    read: (cell, unit) => {
      const value = numberIn(cell);
      if (typeof value !== 'number') return { expected: value.fault };
      if (isAmbiguous(kind, value, unit, options)) {
        const either = `${trimmed(value)} % or ${trimmed(100 * value)} %`;
        return { expected: `a clear percentage: this may be ${either}; the unit "fraction" says which` };
      }
      const broken = limitsBroken(kind, value, unit, options);
      return broken ? { expected: broken } : { value: toSi(kind, value, unit) };
    },
  });
}

/** Reads a number that has no unit. */
const unitless =
  (limits: Limits, refused: (value: number) => string | undefined = () => undefined) =>
  (cell: Cell): Reading<number> => {
    const value = numberIn(cell);
    if (typeof value !== 'number') return { expected: value.fault };
    const expected = refused(value) ?? limitsBroken('number', value, '', limits);
    return expected === undefined ? { value } : { expected };
  };

/** A plain number that has no unit: a ratio, a coefficient. */
export function ratio<O extends Presence<number> & Limits>(
  label: string,
  options: O,
): Field<Given<number, O>> {
  return field<number, O>(label, options, { read: unitless(options) });
}

/** A whole number of things. */
export function count<O extends Presence<number> & Limits>(
  label: string,
  options: O,
): Field<Given<number, O>> {
  const fraction = (value: number) => (Number.isInteger(value) ? undefined : 'a whole number');
  return field<number, O>(label, options, { read: unitless(options, fraction) });
}

/** An amount of money; its unit is the currency's three-letter code (ISO 4217). */
export function money<O extends Presence<number> & Limits>(
  label: string,
  options: O,
): Field<Given<number, O>> {
  return { ...ratio(label, options), unit: 'currency', customaryUnit: 'USD' };
}

/** A price of fuel, such as 6.40 USD/US gal or 2.30 EUR/L; kept per m³. */
export function fuelPrice<O extends Presence<number>>(label: string, options: O): Field<Given<number, O>> {
  return field<number, O>(label, options, {
    unit: 'currency per volume',
    customaryUnit: 'USD/US gal',
    read: (cell, unit) => {
      const value = numberIn(cell);
      if (typeof value !== 'number') return { expected: value.fault };
      return value < 0
        ? { expected: 'a number of at least 0' }
        : { value: value / toSi('volume', 1, unit.slice(4)) };
    },
  });
}

/** Free text. A number typed where a name belongs is taken as its text. */
export function text<O extends Presence<string>>(label: string, options: O): Field<Given<string, O>> {
  return field<string, O>(label, options, {
    read: (cell) =>
      isErrorText(cell) || (typeof cell !== 'string' && typeof cell !== 'number')
        ? { expected: 'text' }
        : { value: plain(String(cell)) },
  });
}

/** A word that other tables repeat, such as the basis of a weight: its case does not matter. */
export function term<O extends Presence<string>>(label: string, options: O): Field<Given<string, O>> {
  return field<string, O>(label, options, {
    read: (cell) =>
      typeof cell === 'string' && !isErrorText(cell) ? { value: nameKey(cell) } : { expected: 'a word' },
  });
}

/** One of a few words. */
export function choice<const C extends readonly string[], O extends Presence<C[number]>>(
  label: string,
  choices: C,
  options: O,
): Field<Given<C[number], O>> {
  return field<C[number], O>(label, options, {
    choices,
    read: (cell) => {
      const found = choices.find((word) => nameKey(word) === nameKey(String(cell)));
      return found === undefined ? { expected: choices.join(' or ') } : { value: found };
    },
  });
}

/** A tick box: TRUE or FALSE, or yes or no typed by hand. */
export function flag<O extends Presence<boolean>>(label: string, options: O): Field<Given<boolean, O>> {
  return field<boolean, O>(label, options, {
    choices: ['TRUE', 'FALSE'],
    read: (cell) => {
      const word = nameKey(String(cell));
      if (word === 'true' || word === 'yes') return { value: true };
      return word === 'false' || word === 'no'
        ? { value: false }
        : { expected: 'TRUE or FALSE (or yes or no)' };
    },
  });
}

/** Names separated by commas; an empty cell is no name. */
export function names(label: string, options: { help: string }): Field<readonly string[]> {
  return field<readonly string[], Presence<readonly string[]>>(
    label,
    { ...options, fallback: { value: [], source: '' } },
    {
      read: (cell) =>
        isErrorText(cell) || isDate(cell) || typeof cell === 'boolean'
          ? { expected: 'names separated by commas' }
          : {
              value: plain(String(cell))
                .split(',')
                .map(plain)
                .filter((name) => name !== ''),
            },
    },
  ) as Field<readonly string[]>;
}

/** The unit a cell names for a field, or what was expected of it. */
export function unitFor(kind: FieldUnit, cell: Cell): Reading<string> {
  const typed = isBlank(cell) ? '' : plain(String(cell));
  if (kind === 'currency') {
    return /^[A-Za-z]{3}$/.test(typed)
      ? { value: typed.toUpperCase() }
      : { expected: 'a currency code of three letters, such as USD' };
  }
  if (kind === 'currency per volume') {
    const [, code, volume = ''] = /^([A-Za-z]{3}) ?\/ ?(.+)$/.exec(typed) ?? [];
    const unit = unitNamed('volume', volume);
    return code && unit
      ? { value: `${code.toUpperCase()}/${unit}` }
      : { expected: 'a currency and a volume, such as USD/US gal or EUR/L' };
  }
  const unit = unitNamed(kind, typed);
  return unit === undefined ? { expected: `a unit: ${unitsOf(kind).join(', ')}` } : { value: unit };
}
