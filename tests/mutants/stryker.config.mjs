/** Mutates one folder of src, engineering when FOLDER names no other, and runs the tests of the same folder. */
const folder = process.env.FOLDER ?? 'engineering';
const output = `out/mutants/${folder}`;

export default {
  mutate: [`src/${folder}/**/*.ts`],
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutants/vitest.config.ts', dir: `tests/${folder}` },
  // Most are words of messages that the tests match in part only; the names in them are asserted where they matter.
  mutator: { excludedMutations: ['StringLiteral'] },
  concurrency: 1,
  // Far above what any test takes on a busy machine: what counts as a timeout is an endless loop.
  timeoutMS: 30_000,
  timeoutFactor: 4,
  incremental: true,
  incrementalFile: `${output}/incremental.json`,
  tempDirName: `${output}/sandbox`,
  ignorePatterns: ['out', 'dist'],
  reporters: ['progress-append-only', 'clear-text', 'json'],
  jsonReporter: { fileName: `${output}/mutants.json` },
  clearTextReporter: { allowColor: false, reportTests: false },
  warnings: { slow: false },
};
