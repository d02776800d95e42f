import type { TableGrids, TableName } from '../../src/tables/catalogue.ts';
import type { Cell, Grid } from '../../src/tables/cell.ts';

/** Tables with one row for each package and something of it: their first column names the package. */
const perPackage: readonly TableName[] = ['components', 'fuel points', 'power points', 'cooling'];

/** The tables with as many packages, made from those there are by repeating them under numbered names. */
export function manyPackages(grids: TableGrids, wanted: number): TableGrids {
  const packages = grids.packages as Grid;
  const [header = []] = packages;
  const originals = header
    .slice(2)
    .map(String)
    .filter((name) => name !== 'note');
  const copies = Array.from({ length: wanted }, (_, index) => ({
    original: originals[index % originals.length] as string,
    name: index < originals.length ? (originals[index] as string) : `Package ${index + 1}`,
  }));
  const column = (name: string) => header.indexOf(name);
  const across = packages.map((row, index): Cell[] => [
    ...row.slice(0, 2),
    ...copies.map(({ original, name }) => (index === 0 ? name : row[column(original)])),
  ]);
  const repeated = perPackage.flatMap((table): [TableName, Grid][] => {
    const grid = grids[table];
    if (grid === undefined) return [];
    const [labels = [], units = [], ...rows] = grid;
    const own = copies.flatMap(({ original, name }) =>
      rows.filter(([first]) => first === original).map(([, ...rest]) => [name, ...rest]),
    );
    return [[table, [labels, units, ...own]]];
  });
  return { ...grids, packages: across, ...Object.fromEntries(repeated) };
}
