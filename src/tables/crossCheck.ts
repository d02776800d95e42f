import type { Airframe } from './airframe.ts';
import type { Catalogue } from './catalogue.ts';
import { nameKey } from './cell.ts';
import { checkComponents } from './checkComponents.ts';
import { checkReferences } from './checkReferences.ts';
import { attributeConflict, conflict } from './conflict.ts';
import type { FaultLog } from './faults.ts';
import type { Station } from './stations.ts';

/** More by more than rounding; what is not given is not more. */
const exceeds = (one: number | undefined, other: number | undefined) =>
  one !== undefined && other !== undefined && one > other * (1 + 1e-9);

function checkEnvelope({ envelope }: Catalogue, log: FaultLog): void {
  envelope.forEach((point, index) => {
    const previous = envelope[index - 1];
    if (point.forward >= point.aft)
      conflict(log, 'envelope', point, 'forward limit', 'a forward limit ahead of the aft limit');
    if (previous !== undefined && point.weight <= previous.weight)
      conflict(log, 'envelope', point, 'weight', 'weights that increase from row to row');
  });
}

/** Limits shared by a group: every station of it states the same one, and the least loads fit in. */
function checkGroup(members: readonly Station[], log: FaultLog): void {
  const first = members.find(({ groupMaximum }) => groupMaximum !== undefined);
  for (const station of members) {
    const place = { row: station.row, rowName: station.name };
    if (station.groupMaximum === undefined)
      conflict(log, 'stations', place, 'group maximum', 'the limit of the group');
    else if (station.groupMaximum !== first?.groupMaximum)
      conflict(log, 'stations', place, 'group maximum', `the same as in row ${first?.row}`);
  }
  const least = members.reduce((sum, { minimum }) => sum + minimum, 0);
  if (first !== undefined && exceeds(least, first.groupMaximum)) {
    const place = { row: first.row, rowName: first.name };
    conflict(log, 'stations', place, 'group maximum', 'no less than the minima of the group together');
  }
}

function checkStations({ stations, tanks }: Catalogue, log: FaultLog): void {
  const groups = new Map<string, Station[]>();
  for (const station of stations) {
    const { row, name, group, groupMaximum } = station;
    const place = { row, rowName: name };
    if (exceeds(station.minimum, station.maximum))
      conflict(log, 'stations', place, 'minimum', 'no more than the maximum');
    if (exceeds(station.usual, station.maximum))
      conflict(log, 'stations', place, 'usual', 'no more than the maximum');
    if (group !== undefined) groups.set(group, [...(groups.get(group) ?? []), station]);
    else if (groupMaximum !== undefined)
      conflict(log, 'stations', place, 'limit group', 'the name of the group that shares this maximum');
  }
  for (const members of groups.values()) checkGroup(members, log);

  // Both name columns of the loadings table
  const taken = new Set(stations.map(({ name }) => nameKey(name ?? '')));
  for (const { row, name } of tanks) {
    if (name !== undefined && taken.has(nameKey(name)))
      conflict(log, 'tanks', { row, rowName: name }, 'tank', 'a name that no station has');
  }
}

function checkAirframe(airframe: Airframe, log: FaultLog): void {
  const refuse = (attribute: string, expected: string) =>
    attributeConflict(log, 'airframe', attribute, 'value', expected);
  const takeoff = airframe.maximumTakeoffWeight;
  if (exceeds(takeoff, airframe.maximumRampWeight))
    refuse('maximum ramp weight', 'no less than the maximum takeoff weight');
  if (exceeds(airframe.maximumLandingWeight, takeoff))
    refuse('maximum landing weight', 'no more than the maximum takeoff weight');
  if (exceeds(airframe.maximumZeroFuelWeight, takeoff))
    refuse('maximum zero-fuel weight', 'no more than the maximum takeoff weight');
  if (exceeds(airframe.cruiseLimitSpeed, airframe.neverExceedSpeed)) refuse('VNO', 'no more than VNE');
  const { mainWheelArm: main, auxiliaryWheelArm: other, gear } = airframe;
  if (main === undefined || other === undefined) return;
  if (gear === 'nosewheel' && other >= main)
    refuse('nose or tail wheel arm', 'a nosewheel ahead of the main wheels');
  if (gear === 'tailwheel' && other <= main)
    refuse('nose or tail wheel arm', 'a tailwheel aft of the main wheels');
}

function checkPackages({ packages }: Catalogue, log: FaultLog): void {
  for (const { name, restrictedRpmFrom: from, restrictedRpmTo: to } of packages) {
    const refuse = (attribute: string, expected: string) =>
      attributeConflict(log, 'packages', attribute, name, expected);
    if (from !== undefined && to === undefined) refuse('restricted rpm to', 'where the restriction ends');
    if (from === undefined && to !== undefined) refuse('restricted rpm from', 'where the restriction begins');
    if (from !== undefined && to !== undefined && from >= to)
      refuse('restricted rpm to', 'more than where the restriction begins');
  }
}

function checkFuelPoints({ fuelPoints }: Catalogue, log: FaultLog): void {
  for (const { row, package: rowName, bsfc, fuelFlow } of fuelPoints) {
    if (log.isFaulty('fuel points', row, 'BSFC') || log.isFaulty('fuel points', row, 'fuel flow')) continue;
    if ((bsfc === undefined) === (fuelFlow === undefined))
      conflict(log, 'fuel points', { row, rowName }, 'BSFC', 'either BSFC or fuel flow');
  }
}

/** Faults that only show when values are held against each other. */
export function crossCheck(tables: Catalogue, log: FaultLog): void {
  checkReferences(tables, log);
  checkComponents(tables.components, log);
  checkAirframe(tables.airframe, log);
  checkPackages(tables, log);
  checkEnvelope(tables, log);
  checkStations(tables, log);
  checkFuelPoints(tables, log);
}
