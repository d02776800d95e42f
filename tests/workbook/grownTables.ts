import { type Cell, type Grid, nameKey } from '../../src/tables/cell.ts';
import type { Grids } from '../../src/workbook/layout.ts';

const ownColumns = ['attribute', 'unit', 'note'];

/** Columns of a packages table that hold a package. */
const packageColumns = ([header = []]: Grid) =>
  header.flatMap((cell, column) => (ownColumns.includes(nameKey(String(cell))) ? [] : [column]));

/** A workbook with as many packages: the first of the sample's, then copies of them under other names. */
export function withPackages(grids: Grids, count: number): Grids {
  const packages = grids.packages ?? [];
  const columns = packageColumns(packages);
  const chosen = Array.from({ length: count }, (_, index) => {
    const column = columns[index % columns.length] as number;
    const of = String(packages[0]?.[column]);
    return {
      column,
      of,
      name: index < columns.length ? of : `${of} ${Math.floor(index / columns.length) + 1}`,
    };
  });
  const across = packages.map((line, row): Cell[] => [
    ...line.filter((_, column) => column < (columns[0] as number)),
    ...chosen.map(({ column, name }): Cell => (row === 0 ? name : line[column])),
  ]);
  /** An option for packages that there are, the first where none of its own is left. */
  const fitted = (line: readonly Cell[], fits: number) => {
    const wanted = String(line[fits] ?? '').split(/, */);
    const left = chosen.filter(
      ({ name }, index) => wanted.includes(name) || (index === 0 && wanted[0] !== ''),
    );
    return line.with(fits, left.map(({ name }) => name).join(', '));
  };
  const ofPackages = (grid: Grid): Grid => {
    const [header = [], units = [], ...body] = grid;
    const column = (label: string) => header.findIndex((cell) => nameKey(String(cell)) === label);
    const [at, fits] = [column('package'), column('fits')];
    if (fits >= 0) return [header, units, ...body.map((line) => fitted(line, fits))];
    if (at < 0) return grid;
    const common = body.filter((line) => !columns.some((column) => packages[0]?.[column] === line[at]));
    const own = chosen.flatMap(({ of, name }) =>
      body.filter((line) => line[at] === of).map((line) => line.with(at, name)),
    );
    return [header, units, ...common, ...own];
  };
  const others = Object.entries(grids).map(([table, grid]) => [
    table,
    grid && table !== 'packages' ? ofPackages(grid) : across,
  ]);
  return Object.fromEntries(others) as Grids;
}

/** A table whose last record comes again and again, its name numbered; a station or tank with its column of loadings. */
export function withMoreRecords(grids: Grids, table: string, more: number, naming?: string): Grids {
  const grid = grids[table] ?? [];
  const [header = []] = grid;
  const last = grid.at(-1) ?? [];
  const at = header.indexOf(naming);
  const copies = Array.from({ length: more }, (_, index) =>
    last.map((cell, column): Cell => (column === at ? `${cell} ${index + 2}` : cell)),
  );
  const unit = naming === 'tank' ? 'US gal' : 'lb';
  const names = copies.map((line) => line[at] ?? null);
  const loadings = (grids.loadings ?? []).map((line, row) => [
    ...line,
    ...(row === 0 ? names : names.map(() => (row === 1 ? unit : 0))),
  ]);
  const hasLoadings = ['station', 'tank'].includes(String(naming));
  return { ...grids, ...(hasLoadings && { loadings }), [table]: [...grid, ...copies] };
}

/** A table of attributes with other values. */
export const withValues = (grids: Grids, table: string, values: Readonly<Record<string, Cell>>): Grids => ({
  ...grids,
  [table]: (grids[table] ?? []).map((line) => {
    const value = values[String(line[0])];
    return value === undefined ? line : line.with(1, value);
  }),
});
