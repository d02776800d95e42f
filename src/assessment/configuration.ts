import type { Catalogue } from '../tables/catalogue.ts';
import { nameKey } from '../tables/cell.ts';
import type { Equipment } from '../tables/equipment.ts';
import type { Package } from '../tables/packages.ts';
import type { Tank } from '../tables/tanks.ts';
import type { Finding } from './finding.ts';

/** What is aboard with one package: the options and tanks that are chosen and can be had with it. */
export interface Configuration {
  readonly equipment: readonly Equipment[];
  readonly tanks: readonly Tank[];
  readonly findings: readonly Finding[];
}

export const fitsTo = (fits: readonly string[], { name }: Package) =>
  fits.length === 0 || fits.some((other) => nameKey(other) === nameKey(name));
const chosen = ({ standard, fitted }: Equipment) => standard || fitted;

/** A tank that says nothing of itself is part of the kit. */
export const isStandardTank = ({ standard, fitted }: Tank) => standard ?? fitted === undefined;
const chosenTank = (tank: Tank) => isStandardTank(tank) || (tank.fitted ?? false);

/** Choices that contradict each other, or that this package does not allow. */
function configurationFindings(
  catalogue: Catalogue,
  engine: Package,
  equipment: readonly Equipment[],
): Finding[] {
  const aboard = new Set(equipment.map(({ name }) => nameKey(name)));
  const finding = (gravity: Finding['gravity'], subject: string, text: string): Finding => ({
    gravity,
    package: engine.name,
    subject,
    text,
    source: 'equipment table',
  });
  const leftOut = [...catalogue.equipment.filter(chosen), ...catalogue.tanks.filter(chosenTank)]
    .filter(({ fits }) => !fitsTo(fits, engine))
    .map(({ name }) => finding('note', name, `cannot be had with ${engine.name}: left out of its figures`));
  const missing = equipment.flatMap(({ name, needs }) =>
    needs
      .filter((other) => !aboard.has(nameKey(other)))
      .map((other) => finding('stop', name, `needs ${other}, which is not fitted`)),
  );
  const clashes = equipment.flatMap(({ name, excludes }) =>
    excludes
      .filter((other) => aboard.has(nameKey(other)))
      .map((other) => finding('stop', name, `cannot stand beside ${other}: choose one`)),
  );
  return [...missing, ...clashes, ...leftOut];
}

export function configure(catalogue: Catalogue, engine: Package): Configuration {
  const equipment = catalogue.equipment.filter((item) => chosen(item) && fitsTo(item.fits, engine));
  return {
    equipment,
    tanks: catalogue.tanks.filter((tank) => chosenTank(tank) && fitsTo(tank.fits, engine)),
    findings: configurationFindings(catalogue, engine, equipment),
  };
}
