import type { Build } from '../tables/build.ts';
import type { Catalogue } from '../tables/catalogue.ts';
import type { Cell } from '../tables/cell.ts';
import type { Package } from '../tables/packages.ts';
import { assess, basisOf } from './assess.ts';
import { cautions } from './cautions.ts';
import type { Context } from './context.ts';
import type { Display } from './display.ts';
import { flightCards } from './flightCards.ts';
import { groundCards } from './groundCards.ts';
import { recalibrate } from './recalibration.ts';
import { recalibrationRows } from './recalibrationRows.ts';
import { stallCards } from './stallCards.ts';
import {
  bandOf,
  type CardFigure,
  emptyWeightWords,
  phaseOneWords,
  recordedFields,
  type TestCard,
} from './testCard.ts';
import { compareResults, type Measured } from './testComparison.ts';

const head = ['', 'Predicted', 'from', 'to', '', 'Limit', 'Unit', 'Measured', ''];

function figureRow({ cell, unit }: Display, figure: CardFigure): Cell[] {
  const { label, shown, predicted, band, limit, least, words } = figure;
  const ends = predicted !== undefined && band ? bandOf(predicted, band) : undefined;
  return [
    label,
    cell(shown, predicted) ?? (limit === undefined ? 'not known' : null),
    cell(shown, ends?.low),
    cell(shown, ends?.high),
    limit === undefined ? null : least ? 'at least' : 'at most',
    cell(shown, limit),
    unit(shown),
    null,
    words ?? null,
  ];
}

/** What the card's columns of the test results table are called. */
const recordedWords = (card: TestCard) =>
  [...recordedFields(card).map(({ label }) => label), card.record].join(', ');

function cardRows(display: Display, card: TestCard, index: number): Cell[][] {
  return [
    [`Card ${index + 1}: ${card.name}`],
    ['Set up', card.setUp],
    ...(card.figures.length > 0 ? [head, ...card.figures.map((figure) => figureRow(display, figure))] : []),
    ['Record', recordedWords(card)],
    ['Reduce', card.reduce],
    ['Caution', card.caution],
  ];
}

function resultRow({ cell, unit }: Display, each: Measured): Cell[] {
  const { result, what, shown, measured, predicted, inside, reduced, reducedTo } = each;
  return [
    result.date,
    result.test,
    what,
    cell(shown, measured),
    cell(shown, predicted),
    unit(shown),
    inside === undefined ? 'not predicted' : inside ? 'inside the band' : 'OUTSIDE',
    cell(shown, reduced),
    reducedTo,
  ];
}

function resultRows({ display }: Context, measured: readonly Measured[]): Cell[][] {
  return [
    ['Measured, each beside the prediction for its own conditions'],
    ['Date', 'Test', '', 'Measured', 'Predicted', 'Unit', '', 'Reduced', 'to'],
    ...measured.map((each) => resultRow(display, each)),
  ];
}

/** FLIGHT_TEST_CARDS: a card a test; with results, what they say, what they change, and the rows that adopt them. */
export function testCardsBlock(catalogue: Catalogue, build: Build, engine: Package): Cell[][] {
  const basis = basisOf(catalogue);
  const { context } = basis;
  const assessment = assess(basis, engine);
  const cards = [
    ...groundCards(assessment),
    ...flightCards(context, assessment),
    ...stallCards(context, assessment),
  ];
  return [
    [`Flight-test cards: ${catalogue.airframe.name} with ${engine.name}`],
    [phaseOneWords],
    [
      'Bands: climb, its speeds and ground roll at least twice the rms error against certificated aircraft; the others common practice.',
    ],
    [emptyWeightWords(context, assessment)],
    ...cautions.map((caution): Cell[] => [caution]),
    ...cards.flatMap((card, index) => cardRows(context.display, card, index)),
    ...(build.testResults.length > 0
      ? [
          ...resultRows(context, compareResults(context, assessment, build.testResults)),
          ...recalibrationRows(context, recalibrate(basis, assessment, build.testResults)),
        ]
      : []),
  ];
}
