import type { Catalogue } from '../tables/catalogue.ts';
import { assess, basisOf } from './assess.ts';
import { builtPackage } from './builtPackage.ts';
import { cautions } from './cautions.ts';
import type { Display } from './display.ts';
import { flightCards } from './flightCards.ts';
import { groundCards } from './groundCards.ts';
import { stallCards } from './stallCards.ts';
import { tableUnits } from './tableUnits.ts';
import {
  bandOf,
  type CardFigure,
  emptyWeightWords,
  phaseOneWords,
  recordedFields,
  type TestCard,
} from './testCard.ts';

/** A line of a printed card; what is measured is written beside it. */
export interface PrintedFigure {
  readonly label: string;
  readonly predicted: string;
  readonly band: string;
  readonly limit: string;
  readonly unit: string;
  readonly words: string;
}

/** A card in words and figures, and the heads of the table that is filled in by hand. */
export interface PrintedCard {
  readonly title: string;
  readonly setUp: string;
  readonly figures: readonly PrintedFigure[];
  /** what the test results table asks for, with its unit; nothing where it asks for none */
  readonly columns: readonly string[];
  readonly record: string;
  readonly reduce: string;
  readonly caution: string;
}

/** What is printed: plain data. */
export interface PrintedCards {
  readonly title: string;
  /** said before all cards */
  readonly words: readonly string[];
  readonly groups: readonly { readonly title: string; readonly cards: readonly PrintedCard[] }[];
}

function printedFigure(display: Display, figure: CardFigure): PrintedFigure {
  const { label, shown, predicted, band, limit, least, words } = figure;
  const ends = predicted !== undefined && band ? bandOf(predicted, band) : undefined;
  const number = (value: number) => display.number(shown, value);
  return {
    label: label.trim(),
    predicted: predicted !== undefined ? number(predicted) : limit === undefined ? 'not known' : '',
    band: ends ? `${number(ends.low)} – ${number(ends.high)}` : '',
    limit: limit === undefined ? '' : `${least ? 'at least' : 'at most'} ${number(limit)}`,
    unit: display.unit(shown),
    words: words ?? '',
  };
}

/** The cards as they are printed: what is done on the ground, in the air, and at both ends of the CG range. */
export function printedCards(catalogue: Catalogue): PrintedCards {
  const engine = builtPackage(catalogue);
  const basis = basisOf(catalogue);
  const { context } = basis;
  const { display } = context;
  const assessment = assess(basis, engine);
  const unitOf = tableUnits(display);
  let number = 0;
  const printed = (card: TestCard): PrintedCard => ({
    title: `Card ${++number}: ${card.name}`,
    setUp: card.setUp,
    figures: card.figures.map((figure) => printedFigure(display, figure)),
    columns: recordedFields(card).map((field) => {
      const unit = field.unit === undefined ? '' : unitOf(field);
      return unit === '' ? field.label : `${field.label}, ${unit}`;
    }),
    record: card.record,
    reduce: card.reduce,
    caution: card.caution,
  });
  return {
    title: `${catalogue.airframe.name} with ${engine.name}`,
    words: [phaseOneWords, emptyWeightWords(context, assessment), ...cautions],
    groups: [
      { title: 'On the ground', cards: groundCards(assessment).map(printed) },
      { title: 'In the air', cards: flightCards(context, assessment).map(printed) },
      { title: 'Stalls at both ends of the CG range', cards: stallCards(context, assessment).map(printed) },
    ],
  };
}
