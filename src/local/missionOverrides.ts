import type { TableGrids } from '../tables/catalogue.ts';
import { type Cell, nameKey, plain } from '../tables/cell.ts';
import { missionTable } from '../tables/mission.ts';

/**
 * The tables with some mission attributes replaced: `distance=400` keeps the table's unit, `distance=400 nmi` names one.
 * @throws RangeError when the text has no "=", or names no attribute of the mission
 */
export function withMission(grids: TableGrids, overrides: readonly string[]): TableGrids {
  if (overrides.length === 0) return grids;
  const mission = (grids.mission ?? [['attribute', 'value', 'unit', 'note']]).map((row) => [...row]);
  for (const override of overrides) {
    const [, label = '', number = '', unit = ''] = /^([^=]+)=\s*(\S+)\s*(.*)$/.exec(override) ?? [];
    const field = Object.values(missionTable.fields).find((each) => nameKey(each.label) === nameKey(label));
    if (field === undefined) {
      const labels = Object.values(missionTable.fields).map((each) => each.label);
      throw new RangeError(
        `mission must be attribute=value with one of ${labels.join(', ')}; got "${override}"`,
      );
    }
    const value: Cell = /^-?[\d.]+$/.test(number)
      ? Number(number)
      : plain(`${number} ${field.unit ? '' : unit}`);
    const row = mission.find((cells) => nameKey(String(cells[0])) === nameKey(field.label));
    const named = unit !== '' && field.unit !== undefined ? unit : undefined;
    if (row) {
      row[1] = value;
      if (named) row[2] = named;
    } else mission.push([field.label, value, named ?? field.customaryUnit, '']);
  }
  return { ...grids, mission };
}
