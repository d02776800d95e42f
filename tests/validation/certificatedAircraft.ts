/**
 * Published figures of certificated aircraft, named by type certificate and maximum weight.
 *
 * Handbook figures at maximum weight, sea level and standard air, level paved runway, no wind. From memory, except
 * where `read` says which figures were also seen in secondary sources (specification pages, not the handbooks). Stall
 * speeds are calibrated; the takeoff flap's lift is taken as a fraction of the way from clean to landing flap.
 * `used` tells which aircraft the default constants were chosen on and which were kept out of the choice.
 *
 * Two figures fit badly with their own neighbours and are kept: the distance over 50 ft of 2A13 3,000 lb, whose part in
 * the air is shorter than 50 ft at the published climb (1,110 ft/min at 85 kt: 388 ft, against 330 ft), and the ceiling
 * of 3A13 3,100 lb, reached by losing 73 ft/min every 1,000 ft where its lighter, less powerful sister loses 55.
 */
export interface CertificatedAircraft {
  readonly name: string;
  readonly used: 'choice' | 'held out';
  readonly propeller: 'fixed pitch' | 'constant speed';
  readonly powerHp: number;
  readonly wingAreaFt2: number;
  readonly spanFt: number;
  readonly weightLb: number;
  readonly propellerDiameterIn: number;
  readonly stallCleanKt: number;
  readonly stallLandingKt: number;
  /** 0 clean to 1 landing flap */
  readonly takeoffFlap: number;
  readonly cruiseKt: number; // true
  readonly cruiseAltitudeFt: number;
  readonly cruisePowerFraction: number;
  readonly published: Readonly<Record<Figure, number | undefined>>;
  readonly read: string;
}

export const figures = ['climb', 'best-climb speed', 'service ceiling', 'ground roll', 'over 50 ft'] as const;
export type Figure = (typeof figures)[number];
export const figureUnits: Readonly<Record<Figure, string>> = {
  climb: 'ft/min',
  'best-climb speed': 'kt',
  'service ceiling': 'ft',
  'ground roll': 'ft',
  'over 50 ft': 'ft',
};

type Row = readonly [
  name: string,
  used: 'choice' | 'held out',
  propeller: 'fixed pitch' | 'constant speed',
  airframe: readonly [
    powerHp: number,
    wingAreaFt2: number,
    spanFt: number,
    weightLb: number,
    diameterIn: number,
  ],
  stall: readonly [cleanKt: number, landingKt: number, takeoffFlap: number],
  cruise: readonly [trueAirspeedKt: number, altitudeFt: number, powerFraction: number],
  /** In the order of `figures` */
  published: readonly (number | undefined)[],
  read?: string,
];

const fixed = 'fixed pitch';
const constant = 'constant speed';

// biome-ignore format: a table is read by its columns
const rows: readonly Row[] = [
  ['3A19 1,600 lb', 'held out', fixed, [100, 159.5, 33.33, 1600, 69], [48, 42, 0], [106, 7000, 0.75], [670, 68, 14000, 735, 1385]],
  ['3A12 2,400 lb', 'held out', fixed, [160, 174, 36, 2400, 75], [51, 46, 0.3], [120, 8000, 0.75], [700, 76, 13000, 890, 1625], 'ceiling, propeller'],
  ['2A13 2,550 lb', 'held out', fixed, [180, 170, 35.5, 2550, 76], [59, 53, 0.6], [128, 8000, 0.75], [667, 76, 13650, 870, 1660]],
  ['A20CE 2,800 lb', 'held out', constant, [200, 174, 35.5, 2800, 78], [57, 50, 0.3], [148, 7000, 0.75], [925, 82, 17100, 890, 1585], 'landing stall'],
  ['3A19 1,670 lb', 'choice', fixed, [110, 159.5, 33.33, 1670, 69], [48, 43, 0.3], [107, 8000, 0.75], [715, 67, 14700, 725, 1340], 'all but the flap'],
  ['3A12 2,300 lb', 'choice', fixed, [160, 174, 35.83, 2300, 75], [50, 44, 0], [122, 8000, 0.75], [770, 73, 14200, 805, 1440]],
  ['3A12 2,550 lb', 'choice', fixed, [180, 174, 36.08, 2550, 76], [53, 48, 0.3], [124, 8500, 0.75], [730, 74, 14000, 960, 1630], 'climb, ceiling, takeoff, landing stall'],
  ['3A13 2,950 lb', 'choice', constant, [230, 174, 35.83, 2950, 82], [56, 50, 0.5], [144, 8000, 0.75], [1010, 78, 16500, 705, 1350]],
  ['3A13 3,100 lb', 'choice', constant, [235, 174, 35.83, 3100, 82], [54, 50, 0.5], [156, 7500, 0.75], [1140, 88, 14300, 820, 1570], 'all but propeller, clean stall, best-climb speed and flap'],
  ['2A13 3,000 lb', 'choice', constant, [235, 170, 35.4, 3000, 80], [64, 56, 0.6], [144, 9000, 0.75], [1110, 85, 17500, 886, 1216], 'climb, ceiling, cruise, ground roll, landing stall'],
  ['A16EA 2,400 lb', 'choice', fixed, [180, 140, 31.5, 2400, 76], [56, 53, 0], [139, 9000, 0.75], [850, 90, 13800, 865, 1550]],
  ['A16EA 2,200 lb', 'choice', fixed, [150, 140, 31.5, 2200, 73], [54, 51, 0], [128, 8500, 0.75], [660, undefined, 12650, 880, 1600]],
  ['A13CE 2,500 lb', 'choice', constant, [180, 174, 35.5, 2500, 76], [55, 46, 0.3], [130, 10000, 0.75], [840, undefined, 14600, 750, 1400], 'climb, cruise, landing stall'],
  ['3A17 2,650 lb', 'choice', constant, [180, 174, 36, 2650, 76], [54, 50, 0], [140, 9000, 0.75], [800, undefined, 16800, 1060, 1775], 'climb, ceiling, cruise, distance over 50 ft'],
  ['3A17 2,550 lb', 'choice', constant, [195, 174, 35.83, 2550, 76], [53, 46, 0.3], [130, 6000, 0.8], [870, undefined, 17000, 800, 1360]],
  ['5A6 2,800 lb', 'choice', constant, [230, 174, 35.83, 2800, 82], [53, 48, 0.5], [142, 8000, 0.75], [1100, undefined, 17700, 625, 1205]],
  ['2A3 2,740 lb', 'choice', constant, [200, 174.8, 36.08, 2740, 74], [63, 55, 0.5], [169, 8000, 0.75], [1030, 88, 18800, undefined, 1517]],
  ['A18SO 1,670 lb', 'choice', fixed, [112, 124.7, 34, 1670, 72], [52, 49, 0.5], [108, 8800, 0.75], [718, 70, 13000, 820, 1460]],
];

export const certificatedAircraft: readonly CertificatedAircraft[] = rows.map(
  ([name, used, propeller, airframe, stall, cruise, published, read = 'nothing']) => ({
    name,
    used,
    propeller,
    powerHp: airframe[0],
    wingAreaFt2: airframe[1],
    spanFt: airframe[2],
    weightLb: airframe[3],
    propellerDiameterIn: airframe[4],
    stallCleanKt: stall[0],
    stallLandingKt: stall[1],
    takeoffFlap: stall[2],
    cruiseKt: cruise[0],
    cruiseAltitudeFt: cruise[1],
    cruisePowerFraction: cruise[2],
    published: Object.fromEntries(figures.map((figure, i) => [figure, published[i]])) as Record<
      Figure,
      number | undefined
    >,
    read,
  }),
);
