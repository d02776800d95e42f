import { airExamples } from './airExamples.ts';
import { balanceExamples } from './balanceExamples.ts';
import { coolingExamples } from './coolingExamples.ts';
import { engineExamples } from './engineExamples.ts';
import type { Examples } from './example.ts';
import { flightExamples } from './flightExamples.ts';
import { systemExamples } from './systemExamples.ts';
import { weightExamples } from './weightExamples.ts';

/** Of every formula function. */
export const examples: Examples = {
  ...airExamples,
  ...engineExamples,
  ...weightExamples,
  ...balanceExamples,
  ...flightExamples,
  ...coolingExamples,
  ...systemExamples,
};
