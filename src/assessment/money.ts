import { numberText } from './display.ts';

const withoutDecimals = 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF'.split(' ');
const withThreeDecimals = 'BHD IQD JOD KWD LYD OMR TND'.split(' ');

/** Decimals of a currency's smallest coin. @source ISO 4217, from memory */
function decimalsOf(currency: string): number {
  if (withoutDecimals.includes(currency)) return 0;
  return withThreeDecimals.includes(currency) ? 3 : 2;
}

/** Rounds to a whole number, halves away from zero, without mistaking the tail of a binary fraction for part of it. */
function toWhole(value: number): number {
  const whole = Math.sign(value) * Math.round(Math.abs(Number(value.toPrecision(14))));
  return whole === 0 ? 0 : whole;
}

/**
 * Amounts of one currency as whole numbers of its smallest coin, so that lines add up to their total to the last digit.
 */
export interface Coins {
  /** whole coins of an amount, halves away from zero */
  readonly of: (amount: number) => number;
  /** whole coins of a share of an amount that is in coins */
  readonly share: (coins: number, fraction: number) => number;
  /** the amount that so many coins are */
  readonly amount: (coins: number) => number;
  /** the amount in words, all its decimals shown */
  readonly text: (coins: number) => string;
}

export function coinsOf(currency: string): Coins {
  const decimals = decimalsOf(currency);
  const perUnit = 10 ** decimals;
  const amount = (coins: number) => Number((coins / perUnit).toFixed(decimals));
  return {
    of: (value) => toWhole(value * perUnit),
    share: (coins, fraction) => toWhole(coins * fraction),
    amount,
    text: (coins) => numberText(amount(coins), 1 / perUnit),
  };
}
