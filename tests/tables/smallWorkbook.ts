import { gridOfCsv } from '../../src/local/tableFolder.ts';
import { readCatalogue, type TableGrids, type TableName } from '../../src/tables/catalogue.ts';
import type { Cell } from '../../src/tables/cell.ts';
import { faultText } from '../../src/tables/faults.ts';

type Grids = Record<TableName, Cell[][]>;

/** An invented aircraft with two packages, every table filled and without a fault. */
const texts: Readonly<Record<TableName, string>> = {
  airframe: `attribute,value,unit,note
airframe,Wren,,
baseline package,Ash,,
firewall arm,50,in,
empty weight,900,lb,on three scales
empty CG,80,in,
weighed with package,Ash,,
weighed with equipment,"radio, lights",,
empty weight basis,weighed,,
maximum takeoff weight,1600,lb,
maximum ramp weight,1610,lb,
maximum landing weight,1550,lb,
maximum zero-fuel weight,1500,lb,
wing area,120,ft²,
wing span,30,ft,
CLmax clean,1.5,,
VNO,120,kt,
VNE,150,kt,
landing gear,nosewheel,,
main wheel arm,95,in,
nose or tail wheel arm,40,in,
kit price,40000,USD,`,
  envelope: `weight,forward limit,aft limit,basis
lb,in,in,
1000,78,90,designer
1600,82,90,designer`,
  stations: `station,arm,minimum,maximum,usual,persons,limit group,group maximum
,in,lb,lb,lb,,,lb
pilot,85,110,250,180,1,,
passenger,85,0,250,0,1,,
shelf,110,0,40,0,0,rear,80
locker,120,0,60,10,0,Rear,80`,
  loadings: `loading,pilot,passenger,shelf,locker,main tank
,lb,lb,lb,lb,US gal
alone,170,0,0,0,20
two,170,170,20,20,20`,
  tanks: `tank,arm,usable,unusable,burn order,fits,standard,fitted,tank weight
,in,US gal,US gal,,,,,lb
main tank,88,30,1,1,,TRUE,TRUE,0`,
  packages: `attribute,unit,Ash,Birch
cycle,,spark ignition,compression ignition
takeoff power,hp,120,115
takeoff rpm,rpm,2700,3880
maximum continuous power,hp,120,110
cylinders,,4,4
gear ratio,,1,1.7
fuel,,avgas,Jet A
fuel density,lb/US gal,6,6.7
propeller,,fixed pitch,constant speed
propeller diameter,in,70,72
restricted rpm from,rpm,2000,
restricted rpm to,rpm,2250,
static rpm,%,85,`,
  'fuel points': `package,mixture,power,BSFC,fuel flow
,,%,lb/hp·h,US gal/h
Ash,rich,75,0.5,
Ash,rich,100,0.51,
Birch,lean,75,,4.5`,
  'power points': `package,rating,altitude,power
,,ft,hp
Birch,takeoff,0,115
Birch,takeoff,8000,115`,
  cooling: `package,stream,heat fraction,limit,exit area,known power,known true airspeed,known altitude,known OAT,known temperature
,,%,°F,in²,hp,kt,ft,°C,°F
Ash,fins,45,435,50,110,85,2000,15,360`,
  'known points': `package,condition,power,weight,pressure altitude,OAT,true airspeed
,,hp,lb,ft,°C,kt
Ash,level flight,90,1500,6000,3,115`,
  components: `package,component,system,weight,arm,arm from,basis,fluid,supplied by,included in,price,lead time
,,,lb,in,,,,,,USD,weeks
Ash,engine,engine,220,35,,weighed,,kit,,25000,12
Ash,oil,oil,12,8,firewall,calculated,TRUE,builder,,60,1
Ash,propeller,propeller,30,40,firewall,weighed,,kit,,3000,8
Birch,kit as delivered,engine,260,,,calculated,,kit,,38000,20
Birch,engine block,engine,210,34,,calculated,,kit,kit as delivered,,
Birch,gearbox,engine,50,28,,calculated,,kit,kit as delivered,,
Birch,coolant,coolant,9,36,,estimated,TRUE,builder,,30,1
Birch,propeller,propeller,44,40,firewall,weighed,,kit,,9000,14`,
  equipment: `item,weight,arm,basis,price,current,fits,needs,excludes,standard,fitted
,lb,in,,USD,A,,,,,
radio,6,70,weighed,2000,2,,,,FALSE,TRUE
lights,4,90,weighed,900,5,,,,FALSE,TRUE
autopilot,9,120,calculated,6000,3,Birch,radio,,FALSE,FALSE
fairings,12,88,estimated,1500,0,,,large tyres,FALSE,FALSE
large tyres,8,92,estimated,900,0,,,fairings,FALSE,FALSE`,
  allowances: `basis,growth,scatter,correlation
,%,%,%
estimated,4,8,50
calculated,2,4,20
weighed,0,0.6,0`,
  mission: `attribute,value,unit,note
people,2,,
bags,30,lb,
distance,250,nmi,
reserve,30,min,
cruise power,75,%,
slope,0.5,%,`,
  rates: `attribute,value,unit
avgas,6.5,USD/US gal
avgas sold at home,TRUE,
labour an hour,90,USD
sales tax,7,%
deposit,30,%`,
};

/** A copy of all tables, to spoil. */
export function smallWorkbook(): Grids {
  return Object.fromEntries(
    Object.entries(texts).map(([table, text]) => [table, gridOfCsv(text, table).map((row) => [...row])]),
  ) as Grids;
}

/** Writes a cell: the row as a person counts, the column by its header. */
export function put(grid: Cell[][], row: number, header: string, cell: Cell): void {
  const column = (grid[0] as Cell[]).indexOf(header);
  if (column < 0) throw new Error(`no column ${header}`);
  (grid[row - 1] as Cell[])[column] = cell;
}

/** The workbook with one cell changed. */
export function withCell(table: TableName, row: number, header: string, cell: Cell): Grids {
  const grids = smallWorkbook();
  put(grids[table], row, header, cell);
  return grids;
}

/** The workbook without some of its tables. */
export function without(...tables: readonly TableName[]): TableGrids {
  const grids: Partial<Grids> = smallWorkbook();
  for (const table of tables) delete grids[table];
  return grids;
}

/** Every fault of a reading, each in one line. */
export function faultsOf(grids: TableGrids): string[] {
  return readCatalogue(grids).faults.map(faultText);
}
