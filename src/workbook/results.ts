import { argumentOfTable } from '../functions/tableArguments.ts';
import { tableNames } from '../tables/catalogue.ts';
import { type ChartLayout, largestPackageCount, type ResultLayout } from './layout.ts';

/** Blocks begin below this row; where charts stand above them, below that one. */
const top = 5;
const belowCharts = 28;
const chartSize = { width: 620, height: 420, row: 4 };

const lastInLineAbove = { above: true, pattern: ', ([^,]+)$' };

const regionRows = 600;
const rangeRows = 200;
const loadingRows = 300;

const packageColumns = 2 + largestPackageCount; // label, unit, packages

type Given = Partial<ResultLayout> & Pick<ResultLayout, 'function' | 'title' | 'rows' | 'columns'>;

const catalogue = tableNames.map(argumentOfTable);

const result = (given: Given): ResultLayout => ({
  arguments: catalogue,
  row: top,
  column: 1,
  charts: [],
  ...given,
});

const curves = (
  given: Partial<ChartLayout> & Pick<ChartLayout, 'title' | 'part' | 'up' | 'unit'>,
): ChartLayout => ({
  kind: 'curves',
  curves: 'packages',
  fromZero: true,
  column: 1,
  ...chartSize,
  ...given,
});

/** Every computed block of the workbook by the function that computes it. */
export const results = {
  comparison: result({
    function: 'PACKAGE_COMPARISON',
    title: 'The packages side by side',
    rows: 240,
    columns: packageColumns,
    packagesFrom: 2,
  }),
  buildUp: result({
    function: 'WEIGHT_BUILD_UP',
    title: 'Installed weight by system',
    row: belowCharts,
    column: packageColumns + 2,
    rows: 2 + largestPackageCount,
    columns: 9,
    charts: [
      {
        title: 'What each package weighs installed, by system',
        kind: 'stacked bars',
        curves: 'groups',
        part: { row: 0, rows: 1 + largestPackageCount, column: 0 },
        up: 'installed weight',
        unit: { above: false, pattern: ', (.+)$' },
        fromZero: true,
        ...chartSize,
        column: packageColumns + 2,
      },
    ],
  }),
  mission: result({
    function: 'MISSION_CHECK',
    title: 'The mission, asked of every package',
    rows: 160,
    columns: 5 + largestPackageCount,
    packagesFrom: 2,
  }),
  loadingCheck: result({
    function: 'LOADING_CHECK',
    title: 'The named loadings, and the worst of all',
    row: belowCharts,
    rows: loadingRows,
    columns: 30,
  }),
  loadingRegion: result({
    function: 'LOADING_REGION',
    title: 'Numbers of the picture',
    row: belowCharts + loadingRows + 4,
    rows: regionRows,
    columns: 2 + largestPackageCount,
    packagesFrom: 2,
    charts: [
      curves({
        title: 'Every loading the seats and tanks allow, inside the CG limits',
        part: { row: 0, rows: regionRows, column: 0 },
        curves: 'limits, packages',
        up: 'weight',
        unit: { above: false, pattern: 'weights in (.+)\\)' },
        fromZero: false,
        height: 440,
        width: 760,
      }),
    ],
  }),
  fuel: result({
    function: 'FUEL_TABLE',
    title: 'Fuel flow, endurance and the power left at height',
    row: belowCharts,
    rows: 62,
    columns: 1 + 2 * largestPackageCount,
    charts: [
      curves({
        title: 'Fuel flow against power',
        part: { row: 1, rows: 13, column: 0 },
        curves: 'packages twice',
        up: 'fuel flow',
        unit: { above: true, pattern: '^Fuel flow, ([^;]+)' },
        column: 8,
      }),
    ],
  }),
  payloadRange: result({
    function: 'PAYLOAD_RANGE',
    title: 'Payload against range',
    row: belowCharts + 64,
    rows: rangeRows,
    columns: 3 + largestPackageCount,
    packagesFrom: 3,
    charts: [
      curves({
        title: 'Payload against range',
        part: { row: 0, rows: rangeRows, column: 2 },
        up: 'payload',
        unit: { above: false, pattern: 'payload in (.+)\\)' },
      }),
    ],
  }),
  flight: result({
    function: 'FLIGHT_TABLE',
    title: 'Climb, level speed and fields',
    row: belowCharts,
    rows: 160,
    columns: packageColumns,
    packagesFrom: 1,
    charts: [
      curves({
        title: 'Best rate of climb against altitude',
        part: { row: 1, rows: 32, column: 0 },
        up: 'rate of climb',
        unit: lastInLineAbove,
      }),
      curves({
        title: 'Level speed against altitude, up to 75 % power',
        part: { row: 34, rows: 32, column: 0 },
        up: 'true airspeed',
        unit: lastInLineAbove,
        fromZero: false,
        column: 8,
      }),
    ],
  }),
  cooling: result({
    function: 'COOLING_CHECK',
    title: 'What gets too hot, where, and on what day',
    row: belowCharts,
    rows: 200,
    columns: 18,
    packagesFrom: 1,
    charts: [
      curves({
        title: 'Least cooling margin against outside air temperature',
        part: { row: 1, rows: 13, column: 0 },
        up: 'margin',
        unit: lastInLineAbove,
      }),
    ],
  }),
  cost: result({
    function: 'COST_TABLE',
    title: 'To buy, to fly, to keep',
    rows: 120,
    columns: packageColumns,
    packagesFrom: 2,
  }),
  findings: result({
    function: 'INSTALLATION_FINDINGS',
    title: 'All findings, the gravest first',
    rows: 400,
    columns: 8,
    sentences: [6, 7],
  }),
  quote: result({
    function: 'QUOTE_LINES',
    title: 'The quote in preparation',
    arguments: [...catalogue, 'quote'],
    rows: 250,
    columns: 8,
  }),
  weighing: result({
    function: 'WEIGHING_CHECK',
    title: 'The weighed aircraft against what was predicted and quoted',
    arguments: [...catalogue, 'weighings', 'weighing_items', 'changes', 'as_quoted'],
    rows: 200,
    columns: 10,
  }),
  changes: result({
    function: 'CHANGE_RECORD',
    title: 'Empty weight and CG through every change since',
    arguments: [...catalogue, 'weighings', 'weighing_items', 'changes'],
    rows: 200,
    columns: 11,
  }),
  flightTests: result({
    function: 'FLIGHT_TEST_CARDS',
    title: 'The cards, on the ground first',
    arguments: [...catalogue, 'test_results'],
    rows: 400,
    columns: 18,
    sentences: [1],
  }),
} as const;
