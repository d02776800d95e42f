import { compare } from '../assessment/assess.ts';
import { fitsTo, isStandardTank } from '../assessment/configuration.ts';
import type { Display } from '../assessment/display.ts';
import { byGravity, countOf, type Finding, gravityLabels } from '../assessment/finding.ts';
import { findingPlace, type NamedPlace } from '../assessment/findingPlace.ts';
import { type KeyFigure, quoteOf } from '../assessment/quote.ts';
import { messageOf } from '../functions/messages.ts';
import { readCatalogue } from '../tables/catalogue.ts';
import { nameKey } from '../tables/cell.ts';
import { type Fault, faultText } from '../tables/faults.ts';
import { type InputName, type Inputs, inputNames, inputPlace } from '../tables/inputs.ts';
import type { Package } from '../tables/packages.ts';
import { readQuoteTerms } from '../tables/quote.ts';

/** One package to choose, with what decides. */
export interface PanelPackage {
  readonly name: string;
  readonly price: string;
  readonly payload: string;
  readonly verdict: string;
}

/** One option or tank to tick. */
export interface PanelOption {
  readonly table: 'equipment' | 'tanks';
  readonly name: string;
  readonly isFitted: boolean;
  /** false where it can't be had with the chosen package */
  readonly isOffered: boolean;
  readonly text: string;
}

/** Something to know, in words, and the cell where it can be mended. */
export interface PanelFinding {
  readonly text: string;
  readonly place: NamedPlace | undefined;
}

/** Everything the panel shows, from the workbook's tables. */
export interface PanelModel {
  readonly packages: readonly PanelPackage[];
  readonly chosen: string | undefined;
  readonly options: readonly PanelOption[];
  readonly keyFigures: readonly KeyFigure[];
  readonly findings: readonly PanelFinding[];
  readonly notes: readonly PanelFinding[];
  /** what stands in the way of a quote */
  readonly faults: readonly PanelFinding[];
}

const nothing: PanelModel = {
  packages: [],
  chosen: undefined,
  options: [],
  keyFigures: [],
  findings: [],
  notes: [],
  faults: [],
};

/** Faults name a table, a row and a column; not all of them a cell. */
function faultPlace(inputs: Inputs, { table, rowName, column }: Fault): NamedPlace | undefined {
  const name = inputNames.find((each) => each === table) as InputName | undefined;
  if (name === undefined || inputs[name] === undefined) return undefined;
  if (rowName === '' || inputPlace(inputs, name, rowName) === undefined) return { table: name };
  return inputPlace(inputs, name, rowName, column)
    ? { table: name, row: rowName, column }
    : { table: name, row: rowName };
}

const faultsShown = (inputs: Inputs, faults: readonly Fault[]): PanelFinding[] =>
  faults.map((fault) => ({ text: faultText(fault), place: faultPlace(inputs, fault) }));

function optionText(
  display: Display,
  weight: number,
  price: number | undefined,
  offeredTo: string | undefined,
): string {
  const cost = price === undefined ? 'no price' : display.text('money', price);
  const parts = [`${weight < 0 ? '' : '+'}${display.text('weight', weight)}`, cost];
  return [...parts, ...(offeredTo === undefined ? [] : [offeredTo])].join(', ');
}

/** What the tables make of the choices; where they have faults, those and nothing else. */
export function panelModel(inputs: Inputs): PanelModel {
  const { catalogue, faults } = readCatalogue(inputs);
  if (catalogue === undefined) return { ...nothing, faults: faultsShown(inputs, faults) };
  const comparison = compare(catalogue);
  const { display } = comparison.context;
  const { terms, faults: termFaults } = readQuoteTerms(inputs.quote, catalogue);
  const chosen = comparison.assessments.find(
    (each) => terms !== undefined && nameKey(each.package.name) === nameKey(terms.package),
  )?.package;
  const only = (fits: readonly string[]) =>
    chosen === undefined || fitsTo(fits, chosen) ? undefined : `not with ${chosen.name}`;
  const shown = (finding: Finding): PanelFinding => ({
    text: `${gravityLabels[finding.gravity]}: ${finding.subject}: ${finding.text}`,
    place: findingPlace(inputs, finding),
  });
  const own = byGravity(comparison.findings).filter((finding) => concerns(finding, chosen));
  let keyFigures: readonly KeyFigure[] = [];
  const refusals: PanelFinding[] = [];
  try {
    if (terms !== undefined) keyFigures = quoteOf(comparison, terms).keyFigures;
  } catch (error) {
    refusals.push({
      text: messageOf(error),
      place: { table: 'quote' },
    });
  }
  return {
    packages: comparison.assessments.map(({ package: engine, price, payload, findings }) => {
      const [stops, checks] = [countOf(findings, 'stop'), countOf(findings, 'check')];
      const most = price.complete ? '' : 'at least ';
      return {
        name: engine.name,
        price: `${most}${display.text('money', price.total)} without tax`,
        payload: `${display.text('payload', payload.fullFuel.countedOn)} payload to be counted on`,
        verdict: `${stops === 0 ? 'no stop' : `${gravityLabels.stop} ${stops}`}, ${checks === 0 ? 'no check' : `${gravityLabels.check} ${checks}`}`,
      };
    }),
    chosen: chosen?.name,
    options: [
      ...catalogue.equipment
        .filter(({ standard }) => !standard)
        .map(({ name, weight, price, fitted, fits }): PanelOption => {
          const isOffered = only(fits) === undefined;
          const text = optionText(display, weight, price, only(fits));
          return { table: 'equipment', name, isFitted: fitted, isOffered, text };
        }),
      ...catalogue.tanks
        .filter((tank) => !isStandardTank(tank))
        .map(({ name, weight, price, usable, fitted, fits }): PanelOption => {
          const isOffered = only(fits) === undefined;
          const text = `${display.text('fuel', usable)}, ${optionText(display, weight, price, only(fits))}`;
          return { table: 'tanks', name, isFitted: fitted ?? false, isOffered, text };
        }),
    ],
    keyFigures,
    findings: own.filter(({ gravity }) => gravity !== 'note').map(shown),
    notes: own.filter(({ gravity }) => gravity === 'note').map(shown),
    faults: [...faultsShown(inputs, termFaults), ...refusals],
  };
}

const concerns = ({ package: name }: Finding, chosen: Package | undefined) =>
  name === '' || chosen === undefined || nameKey(name) === nameKey(chosen.name);

/** The inputs with one cell changed, as the sheet will have it: shown before the script has answered. */
export function withInput(
  inputs: Inputs,
  table: InputName,
  row: string,
  column: string,
  value: string | boolean,
): Inputs {
  const place = inputPlace(inputs, table, row, column);
  if (place === undefined) return inputs;
  const grid = (inputs[table] ?? []).map((cells, index) =>
    index === place.row ? cells.map((cell, at) => (at === place.column ? value : cell)) : cells,
  );
  return { ...inputs, [table]: grid };
}
