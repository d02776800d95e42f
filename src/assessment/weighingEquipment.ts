import type { Build } from '../tables/build.ts';
import { nameKey } from '../tables/cell.ts';
import type { Package } from '../tables/packages.ts';
import { equipmentDragArea } from './aircraft.ts';
import { configure } from './configuration.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';

const tablesDiffer = (subject: string, text: string): Finding => ({
  gravity: 'check',
  package: '',
  subject,
  source: 'equipment table',
  text,
});

/**
 * What the scales and the equipment table say differently of what is aboard. Drag does not enter a weighing, but known
 * points count as flown with what was weighed: taken in with other equipment, they would give another drag.
 */
export function weighedEquipmentFindings(
  { catalogue, display }: Context,
  engine: Package,
  { weighingItems }: Build,
): Finding[] {
  const { equipment } = configure(catalogue, engine);
  const aboard = new Set(equipment.map(({ name }) => nameKey(name)));
  const options = new Set(catalogue.equipment.map(({ name }) => nameKey(name)));
  const told = weighingItems
    .filter(({ item }) => options.has(nameKey(item)))
    .flatMap(({ item, state, weighing }): Finding[] => {
      const isPart = state === 'part, not aboard';
      if (isPart === aboard.has(nameKey(item))) return [];
      return [
        tablesDiffer(
          item,
          isPart
            ? `weighing ${weighing} adds it as part of the empty aircraft; it is not ticked as fitted`
            : `weighing ${weighing} takes it off as no part of the empty aircraft; it is ticked as fitted`,
        ),
      ];
    });
  const before = new Set((catalogue.airframe.weighedItems ?? '').split(',').map(nameKey));
  const inFlight = catalogue.equipment.filter(({ name }) => before.has(nameKey(name)));
  const difference = equipmentDragArea(equipment) - equipmentDragArea(inFlight);
  const flown = catalogue.knownPoints.length > 0 && Math.abs(difference) > 1e-9;
  return [
    ...told,
    ...(flown
      ? [
          tablesDiffer(
            'known points',
            `count as flown with what the airframe was weighed with; what is ticked now differs by ${display.text('dragArea', difference)} of drag area: with this weighing taken in, take in level flights of this aircraft too`,
          ),
        ]
      : []),
  ];
}
