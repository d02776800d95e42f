import { gridOfCsv } from '../../src/local/tableFolder.ts';
import { type Build, type BuildGrids, type BuildTable, readBuild } from '../../src/tables/build.ts';
import { type Catalogue, readCatalogue, type TableGrids } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';
import { smallWorkbook } from './smallWorkbook.ts';

/** The builder's tables of the invented Wren: weighed twice, changed, tried. Every table filled and without a fault. */
const texts: Readonly<Record<BuildTable, string>> = {
  weighings: `weighing,date,point,reading,tare,arm,scale accuracy,arm accuracy,level
,,,lb,lb,in,lb,in,
A,2026-03-01,nosewheel,260,10,40,1,0.1,TRUE
A,2026-03-01,left main,330,5,95,1,0.1,TRUE
A,2026-03-01,right main,335,5,95,1,0.1,TRUE
B,2026-03-08,nosewheel,250,0,40,1,0.1,TRUE
B,2026-03-08,left main,325,0,95,1,0.1,TRUE
B,2026-03-08,right main,330,0,95,1,0.1,TRUE`,
  'weighing items': `weighing,item,state,weight,volume,density,arm
,,,lb,US gal,lb/US gal,in
A,tools,"aboard, not part",5,,,120
B,unusable fuel,"part, not aboard",,1,,88
B,"oil to full","part, not aboard",,0.8,7.5,8`,
  changes: `date,item,weight,arm,reason
,,lb,in,
2026-04-01,beacon,0.5,150,
2026-05-01,heavier battery,6,40,starter`,
  'as quoted': `attribute,value,unit
quote,Q-1,
empty weight to be counted on,905,lb`,
  'test results': `test,date,power,weight,pressure altitude,OAT,true airspeed,calibrated airspeed,rate of climb,fuel flow
,,hp,lb,ft,°C,kt,kt,ft/min,US gal/h
level flight,2026-06-01,90,1500,6000,3,113,,,
climb,2026-06-02,115,1500,3000,12,,74,650,
fuel flow on the ground,2026-06-02,,,,,,,,16`,
};

export type BuildCells = Record<BuildTable, Cell[][]>;

/** A copy of all of them, to spoil. */
export function smallBuild(): BuildCells {
  return Object.fromEntries(
    Object.entries(texts).map(([table, text]) => [table, gridOfCsv(text, table).map((row) => [...row])]),
  ) as BuildCells;
}

export function catalogueOf(grids: TableGrids = smallWorkbook()): Catalogue {
  const { catalogue, faults } = readCatalogue(grids);
  if (catalogue === undefined) throw new Error(faults.map(faultText).join('\n'));
  return catalogue;
}

export function buildOf(grids: BuildGrids, catalogue: Catalogue = catalogueOf()): Build {
  const { build, faults } = readBuild(grids, catalogue);
  if (build === undefined) throw new Error(faults.map(faultText).join('\n'));
  return build;
}

export const buildFaults = (grids: BuildGrids): string[] =>
  readBuild(grids, catalogueOf()).faults.map(faultText);
