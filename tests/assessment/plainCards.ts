/** Cards of the plain aircraft with its engine at 1.5 m, and ways to change it. */
import { type Assessment, assess, basisOf } from '../../src/assessment/assess.ts';
import { packageNamed } from '../../src/assessment/context.ts';
import { flightCards } from '../../src/assessment/flightCards.ts';
import { groundCards } from '../../src/assessment/groundCards.ts';
import type { TestCard } from '../../src/assessment/testCard.ts';
import type { TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { catalogueOf, plainAircraft, withAttribute, withCells } from './flightFixture.ts';

export const plain = withCells(plainAircraft, 'components', ['Elm', 'engine'], { arm: 1.5 });
export const airframe = (attribute: string, value: Cell, unit = '', grids = plain) =>
  withAttribute(grids, 'airframe', attribute, value, unit);
export const engine = (attribute: string, value: Cell, unit = '', grids = plain) =>
  withAttribute(grids, 'packages', attribute, value, unit, 'Elm');
export const mission = (attribute: string, value: Cell, unit = '', grids = plain) =>
  withAttribute(grids, 'mission', attribute, value, unit);

export function assessed(grids: TableGrids, name = 'Elm') {
  const { context, ...basis } = basisOf(catalogueOf(grids));
  return { context, assessment: assess({ context, ...basis }, packageNamed(context.catalogue, name)) };
}
export function cardOf(name: TestCard['name'], grids = plain, packageName = 'Elm'): TestCard {
  const { context, assessment } = assessed(grids, packageName);
  const found = [...groundCards(assessment), ...flightCards(context, assessment)].find(
    (card) => card.name === name,
  );
  if (found === undefined) throw new Error(`no card ${name}`);
  return found;
}
export const figureOf = (card: TestCard, label: string) =>
  card.figures.find((each) => each.label.startsWith(label));
export const flightOf = (grids = plain): NonNullable<Assessment['flight']> => {
  const { flight } = assessed(grids).assessment;
  if (flight === undefined) throw new Error('must fly');
  return flight;
};
