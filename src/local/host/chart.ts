import type { Zone } from './engine.ts';
import { hiddenDimensionStrategies, mergeStrategies } from './enumerations.ts';
import type {
  GoogleChart,
  GoogleChartBuilder,
  GoogleChartOptions,
  GoogleChartType,
  GoogleContainerInfo,
  GoogleRange,
} from './google.ts';
import { ObjectRecords } from './objectRecords.ts';
import { placeOf } from './rangePlace.ts';
import { strict } from './strict.ts';
import { rangesOf, type TrackedRange } from './trackedRange.ts';
import type { Workbook } from './workbook.ts';

/** A chart as the script built it. */
export interface ChartSpec {
  readonly type: GoogleChartType | undefined;
  readonly ranges: readonly TrackedRange[];
  readonly headerRows: number | undefined;
  /** Google Charts options, nested: `{ hAxis: { title: … } }`. */
  readonly options: ChartOptions;
  readonly position: ChartPosition;
}

export type ChartOptions = { readonly [name: string]: unknown };

/** Anchor cell counted from 1 and offsets from it in pixels. */
export interface ChartPosition {
  readonly row: number;
  readonly column: number;
  readonly offsetX: number;
  readonly offsetY: number;
}

/** A chart in a sheet. */
export interface ChartRecord {
  readonly id: number;
  readonly sheetId: string;
  spec: ChartSpec;
}

/** A built chart: its specification, and the number it has if it stands in a sheet. */
interface BuiltChart {
  readonly spec: ChartSpec;
  readonly id: number | undefined;
}

/** Google Charts' names of options, from memory. An option beyond these is taken for a slip of the pen. */
const knownOptions = new Set(
  (
    'title titleTextStyle titlePosition subtitle legend hAxis vAxis hAxes vAxes series colors lineWidth pointSize ' +
    'pointShape lineDashStyle isStacked width height curveType interpolateNulls backgroundColor chartArea bar ' +
    'fontName fontSize tooltip annotations theme dataOpacity useFirstColumnAsDomain treatLabelsAsText'
  ).split(' '),
);

const charts = new ObjectRecords<BuiltChart>('an EmbeddedChart');

export const builtChart = (chart: GoogleChart): BuiltChart => charts.of(chart);

export function createChart(workbook: Workbook, chart: BuiltChart): GoogleChart {
  const { spec, id } = chart;
  const object = strict<GoogleChart>(workbook.calls, 'EmbeddedChart', {
    getChartId: () => id ?? null,
    getContainerInfo: () => containerInfo(workbook, spec.position),
    getRanges: () => rangesOf(workbook, spec.ranges),
    getNumHeaders: () => spec.headerRows ?? -1,
    getOptions: () =>
      strict<GoogleChartOptions>(workbook.calls, 'ChartOptions', {
        get: (option: string) => readOption(spec.options, option) ?? null,
      }),
    modify: () => createChartBuilder(workbook, chart),
  });
  charts.set(object, chart);
  return object;
}

export function createChartBuilder(workbook: Workbook, start?: BuiltChart): GoogleChartBuilder {
  let spec: ChartSpec = start?.spec ?? {
    type: undefined,
    ranges: [],
    headerRows: undefined,
    options: {},
    position: { row: 1, column: 1, offsetX: 0, offsetY: 0 },
  };
  const change = (part: Partial<ChartSpec>): GoogleChartBuilder => {
    spec = { ...spec, ...part };
    return builder;
  };
  const isAt = (tracked: TrackedRange, sheetId: string, zone: Zone) =>
    tracked.sheetId === sheetId && JSON.stringify(tracked.zone) === JSON.stringify(zone);

  const builder: GoogleChartBuilder = strict<GoogleChartBuilder>(workbook.calls, 'EmbeddedChartBuilder', {
    build: () => createChart(workbook, { spec, id: start?.id }),
    setChartType: (type: GoogleChartType) => change({ type }),
    getChartType: () => spec.type as GoogleChartType,
    addRange(range: GoogleRange) {
      const { sheetId, zone } = placeOf(range);
      return change({ ranges: [...spec.ranges, workbook.track(sheetId, zone)] });
    },
    removeRange(range: GoogleRange) {
      const { sheetId, zone } = placeOf(range);
      return change({ ranges: spec.ranges.filter((tracked) => !isAt(tracked, sheetId, zone)) });
    },
    clearRanges: () => change({ ranges: [] }),
    getRanges: () => rangesOf(workbook, spec.ranges),
    setNumHeaders: (headerRows: number) => change({ headerRows }),
    setOption(option: string, value: unknown) {
      const [name = ''] = option.split('.');
      if (!knownOptions.has(name)) throw new Error(`unknown chart option ${option}`);
      return change({ options: writeOption(spec.options, option.split('.'), value) });
    },
    setPosition: (row: number, column: number, offsetX: number, offsetY: number) =>
      change({ position: { row, column, offsetX, offsetY } }),
    getContainer: () => containerInfo(workbook, spec.position),
    setMergeStrategy(strategy) {
      requireDefault('setMergeStrategy', strategy, mergeStrategies.MERGE_COLUMNS);
      return builder;
    },
    setHiddenDimensionStrategy(strategy) {
      requireDefault('setHiddenDimensionStrategy', strategy, hiddenDimensionStrategies.IGNORE_BOTH);
      return builder;
    },
    setTransposeRowsAndColumns(isTransposed: boolean) {
      requireDefault('setTransposeRowsAndColumns', isTransposed, false);
      return builder;
    },
  });
  return builder;
}

/** Google's default is all that the engine does. */
function requireDefault(member: string, value: unknown, usual: unknown): void {
  if (value !== usual)
    throw new Error(`EmbeddedChartBuilder.${member}: ${value} is not implemented by the local host`);
}

function containerInfo(workbook: Workbook, position: ChartPosition): GoogleContainerInfo {
  return strict<GoogleContainerInfo>(workbook.calls, 'ContainerInfo', {
    getAnchorRow: () => position.row,
    getAnchorColumn: () => position.column,
    getOffsetX: () => position.offsetX,
    getOffsetY: () => position.offsetY,
  });
}

/** The value of an option by its dotted name. */
export function readOption(options: ChartOptions, name: string): unknown {
  let value: unknown = options;
  for (const key of name.split('.')) value = (value as ChartOptions | undefined)?.[key];
  return value;
}

/** Options with one more, which replaces an older value of the same name and leaves its neighbours. */
function writeOption(options: ChartOptions, path: readonly string[], value: unknown): ChartOptions {
  const [key = '', ...rest] = path;
  const current = options[key];
  const inner = typeof current === 'object' && current !== null ? (current as ChartOptions) : {};
  const copied: unknown =
    rest.length > 0 ? writeOption(inner, rest, value) : JSON.parse(JSON.stringify(value));
  return { ...options, [key]: copied };
}
