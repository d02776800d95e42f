import { choice, flag, money, quantity, ratio, term, text } from './field.ts';
import type { RecordOf, Table } from './table.ts';

const fitted = 'fitted to certificated aircraft, see DEVELOPERS.md';

const fields = {
  name: text('airframe', { required: true, help: 'what the kit is called' }),
  datum: text('datum', { help: 'where arms are measured from, in words' }),
  baseline: text('baseline package', {
    help: 'the package the others are compared with; the first one where empty',
  }),
  firewallArm: quantity('length', 'firewall arm', {
    required: true,
    help: 'firewall aft of the datum; suppliers quote arms ahead of the firewall',
  }),
  emptyWeight: quantity('mass', 'empty weight', {
    required: true,
    above: 0,
    help: 'the airframe as weighed, with or without a powerplant as the next rows say',
  }),
  emptyArm: quantity('length', 'empty CG', {
    required: true,
    help: 'its centre of gravity, aft of the datum',
  }),
  weighedWith: text('weighed with package', {
    help: 'the package aboard when it was weighed; empty where it was weighed without powerplant',
  }),
  weighedItems: text('weighed with equipment', {
    help: 'equipment items aboard when it was weighed, separated by commas',
  }),
  weighedFluids: flag('weighed with fluids', {
    fallback: { value: true, source: 'oil and coolant taken as aboard: 14 CFR 23.29 before amendment 64' },
    help: 'whether oil and coolant were aboard',
  }),
  weighedUnusableFuel: flag('weighed with unusable fuel', {
    fallback: { value: true, source: 'unusable fuel taken as aboard: 14 CFR 23.29 before amendment 64' },
    help: 'whether the unusable fuel was aboard',
  }),
  emptyBasis: term('empty weight basis', {
    fallback: { value: 'estimated', source: 'the most careful basis' },
    help: 'how well the empty weight is known: a basis of the allowances table',
  }),
  emptyWeightKnownTo: quantity('mass', 'empty weight known to', {
    above: 0,
    help: 'how far it may be off either way, from its scales; empty: as its basis says',
  }),
  emptyArmKnownTo: quantity('length', 'empty CG known to', {
    atLeast: 0,
    help: 'how far it may be off either way, from scales and measured arms; empty: taken as exact',
  }),
  maximumTakeoffWeight: quantity('mass', 'maximum takeoff weight', {
    required: true,
    above: 0,
    help: 'approved by the designer or the authority',
  }),
  maximumRampWeight: quantity('mass', 'maximum ramp weight', {
    above: 0,
    help: 'where it differs from takeoff',
  }),
  maximumLandingWeight: quantity('mass', 'maximum landing weight', { above: 0, help: 'where there is one' }),
  maximumZeroFuelWeight: quantity('mass', 'maximum zero-fuel weight', {
    above: 0,
    help: 'where there is one: cabin and empty aircraft, without usable fuel',
  }),
  approvedPower: quantity('power', 'approved power', {
    above: 0,
    help: 'the most power the designer allows',
  }),
  maximumFirewallForwardWeight: quantity('mass', 'maximum weight ahead of firewall', {
    above: 0,
    help: 'the most the engine mount and firewall may carry, from the designer',
  }),
  maximumFirewallMoment: quantity('moment', 'maximum moment ahead of firewall', {
    above: 0,
    help: 'the most weight times distance ahead of the firewall, at 1 g, from the designer',
  }),
  ballastArm: quantity('length', 'ballast arm', { help: 'where ballast or a moved battery could sit' }),
  wingArea: quantity('area', 'wing area', { required: true, above: 0, help: 'reference area' }),
  wingSpan: quantity('length', 'wing span', { required: true, above: 0, in: 'ft', help: 'tip to tip' }),
  macLeadingEdge: quantity('length', 'MAC leading edge', {
    help: 'leading edge of the mean aerodynamic chord',
  }),
  macLength: quantity('length', 'MAC length', { above: 0, help: 'mean aerodynamic chord' }),
  liftClean: ratio('CLmax clean', { required: true, above: 0.5, atMost: 4, help: 'flaps up' }),
  liftTakeoff: ratio('CLmax takeoff', { above: 0.5, atMost: 4, help: 'takeoff flaps; clean where empty' }),
  liftLanding: ratio('CLmax landing', { above: 0.5, atMost: 4, help: 'landing flaps; takeoff where empty' }),
  cruiseLimitSpeed: quantity('speed', 'VNO', {
    above: 0,
    help: 'maximum structural cruising speed, calibrated',
  }),
  neverExceedSpeed: quantity('speed', 'VNE', { above: 0, help: 'never-exceed speed' }),
  neverExceedKind: choice('VNE is', ['calibrated airspeed', 'true airspeed'], {
    help: 'whether VNE is a calibrated or a true airspeed (flutter limits are often true)',
  }),
  limitLoadFactor: ratio('limit load factor', {
    atLeast: 1,
    atMost: 12,
    fallback: { value: 3.8, source: '14 CFR 23.337 before amendment 64, normal category: 3.8 at most' },
    help: 'positive manoeuvring limit load factor',
  }),
  gear: choice('landing gear', ['nosewheel', 'tailwheel'], { required: true, help: 'which kind' }),
  mainWheelArm: quantity('length', 'main wheel arm', { help: 'main wheels aft of the datum' }),
  auxiliaryWheelArm: quantity('length', 'nose or tail wheel arm', { help: 'aft of the datum' }),
  maximumAuxiliaryWheelLoad: quantity('mass', 'maximum nose or tail wheel load', {
    above: 0,
    help: 'static, from the designer',
  }),
  cgHeight: quantity('length', 'CG height', {
    above: 0,
    help: 'above the ground, for tip-back and nose-over',
  }),
  oswaldEfficiency: ratio('Oswald efficiency', {
    above: 0.3,
    atMost: 1,
    fallback: { value: 0.64, source: fitted },
    help: 'e in CD = CD0 + CL²/(π e A); a known climb fixes it',
  }),
  propellerStatic: ratio('propeller efficiency standing', {
    above: 0.1,
    atMost: 1,
    fallback: { value: 0.42, source: fitted },
    help: 'share of the actuator-disc ideal, standing still',
  }),
  propellerClimb: ratio('propeller efficiency climb', {
    above: 0.1,
    atMost: 1,
    fallback: { value: 0.76, source: fitted },
    help: 'share of the actuator-disc ideal at best-climb speed',
  }),
  propellerCruise: ratio('propeller efficiency cruise', {
    above: 0.1,
    atMost: 1,
    fallback: { value: 0.81, source: fitted },
    help: 'share of the actuator-disc ideal at the known cruise speed',
  }),
  takeoffFlapDrag: ratio('takeoff flap drag', {
    atLeast: 0,
    atMost: 0.2,
    fallback: { value: 0, source: 'none, as in the choice of the default propeller efficiencies' },
    help: 'added to CD0 with takeoff flaps and gear on the ground',
  }),
  buildHours: quantity('time', 'airframe build hours', { above: 0, help: 'without the powerplant' }),
  kitPrice: money('kit price', { atLeast: 0, help: 'the airframe kit, without the powerplant' }),
  kitLeadTime: quantity('days', 'kit lead time', { atLeast: 0, in: 'weeks', help: 'from order to delivery' }),
  weightUnit: choice('show weights in', ['lb', 'kg'], {
    fallback: { value: 'lb', source: '' },
    help: 'unit of the results',
  }),
  lengthUnit: choice('show arms in', ['in', 'mm', 'cm', 'm'], {
    fallback: { value: 'in', source: '' },
    help: 'unit of the results',
  }),
  fuelUnit: choice('show fuel in', ['US gal', 'L'], {
    fallback: { value: 'US gal', source: '' },
    help: 'unit of the results; fuel flow is this an hour',
  }),
  powerUnit: choice('show power in', ['hp', 'kW', 'PS'], {
    fallback: { value: 'hp', source: '' },
    help: 'unit of the results',
  }),
  speedUnit: choice('show speeds in', ['kt', 'mph', 'km/h'], {
    fallback: { value: 'kt', source: '' },
    help: 'unit of the results; distances follow: nmi, mi, km',
  }),
  heightUnit: choice('show heights in', ['ft', 'm'], {
    fallback: { value: 'ft', source: '' },
    help: 'unit of the results; climb follows: ft/min, m/s',
  }),
};

export const airframeTable: Table<typeof fields> = {
  name: 'airframe',
  shape: 'attributes',
  help: 'the kit: weights, limits, wing, gear',
  required: true,
  unique: true,
  fields,
};

export type Airframe = RecordOf<typeof airframeTable>;
