import type { Grid } from './cell.ts';
import { conflict } from './conflict.ts';
import type { FaultLog } from './faults.ts';
import { type Field, quantity, text } from './field.ts';
import { readRows } from './readRows.ts';
import type { Station } from './stations.ts';
import type { Table } from './table.ts';
import type { Tank } from './tanks.ts';

/** A named loading to check: what is in each seat and baggage place (kg) and each tank (m³). */
export interface Loading {
  readonly name: string;
  readonly row: number;
  readonly stations: ReadonlyMap<string, number>;
  readonly tanks: ReadonlyMap<string, number>;
}

/** The loadings table has a column for every station and tank, so its fields follow from theirs. */
export function loadingsTable(
  stations: readonly Station[],
  tanks: readonly Tank[],
): Table<Readonly<Record<string, Field<unknown>>>> {
  return {
    name: 'loadings',
    shape: 'rows',
    help: 'loadings to check by name: a column for every station and every tank',
    required: false,
    unique: true,
    fields: {
      name: text('loading', { required: true, key: true, help: 'name of the loading' }),
      ...Object.fromEntries(
        stations.map(({ name }) => [
          `station ${name}`,
          quantity('mass', name, { required: true, atLeast: 0, help: 'weight there; 0 for nothing' }),
        ]),
      ),
      ...Object.fromEntries(
        tanks.map(({ name }) => [
          `tank ${name}`,
          quantity('volume', name, { required: true, atLeast: 0, help: 'fuel in it; 0 for none' }),
        ]),
      ),
    },
  };
}

/** Reads the named loadings; fuel above a tank's usable volume is a fault. */
export function readLoadings(
  grid: Grid | undefined,
  stations: readonly Station[],
  tanks: readonly Tank[],
  log: FaultLog,
): Loading[] {
  const named = <R extends { readonly name: string | undefined }>(records: readonly R[]) =>
    records.filter(({ name }) => name !== undefined);
  const table = loadingsTable(named(stations), named(tanks));
  return readRows(table, grid, log).map((record) => {
    const amounts = (kind: string, of: readonly { readonly name: string }[]) =>
      new Map(of.map(({ name }) => [name, (record[`${kind} ${name}`] as number | undefined) ?? 0]));
    const loading = {
      name: String(record.name ?? ''),
      row: record.row,
      stations: amounts('station', stations),
      tanks: amounts('tank', tanks),
    };
    for (const { name, usable } of tanks) {
      if ((loading.tanks.get(name) ?? 0) > usable * (1 + 1e-9)) {
        const place = { row: record.row, rowName: loading.name };
        conflict(log, table.name, place, name, 'no more than the tank holds usable');
      }
    }
    return loading;
  });
}
