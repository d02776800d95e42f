import type { Package } from '../tables/packages.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';
import { fuelAtHome, type HourlyCost, hasOxygen, hourlyCauses, oxygenAltitude } from './hourlyCost.ts';

/** Prices that are missing, fuel that is not sold at home, oxygen that is not fitted. */
export function costFindings(
  context: Context,
  engine: Package,
  configuration: Configuration,
  perHour: HourlyCost,
): Finding[] {
  const { rates, mission } = context.catalogue;
  const fuel = fuelAtHome(rates, engine.fuel);
  const finding = (
    gravity: Finding['gravity'],
    of: string,
    subject: string,
    text: string,
    source = 'rates table',
  ): Finding => ({ gravity, package: of, subject, text, source });
  const findings: Finding[] = [];
  if (fuel === undefined) {
    const text = `the rates know avgas, mogas and Jet A, not ${engine.fuel}`;
    findings.push(finding('check', engine.name, 'fuel price', text));
  } else if (fuel.sold === false) {
    const text = `${engine.fuel} is not sold at the home field: it must be brought, or fetched elsewhere`;
    findings.push(finding('check', engine.name, 'fuel at home', text));
  } else if (fuel.sold === undefined) {
    const text = `not stated whether ${engine.fuel} is sold at the home field`;
    findings.push(finding('note', engine.name, 'fuel at home', text));
  }
  const missing = (causes: readonly (keyof HourlyCost)[]) =>
    causes.filter((cause) => perHour[cause] === undefined).map((cause) => hourlyCauses[cause]);
  const own = missing(['fuel', 'service', 'engine', 'gearbox', 'turbocharger', 'propeller', 'oxygen']);
  if (own.length > 0) {
    const text = `the cost of an hour is without ${own.join(', ')}: a price, an interval or a fuel point is missing`;
    findings.push(finding('check', engine.name, 'cost of an hour', text, 'rates and packages tables'));
  }
  const general = [
    ...missing(['unscheduled', 'insurance', 'hangar']),
    ...(rates.labour === undefined ? ['labour'] : []),
    ...(rates.tax === undefined ? ['sales tax'] : []),
  ];
  if (general.length > 0) {
    findings.push(finding('check', '', 'cost', `without ${general.join(', ')}: no price given`));
  }
  const apart = [
    ...(engine.gearRatio > 1 && perHour.gearbox === 0 ? ['gearbox'] : []),
    ...(engine.criticalAltitude !== undefined && perHour.turbocharger === 0 ? ['turbocharger'] : []),
    ...(engine.propeller === 'constant speed' && perHour.propeller === 0 ? ['propeller'] : []),
  ];
  if (apart.length > 0) {
    const text = `no overhaul of ${apart.join(', ')} given: none is counted`;
    findings.push(finding('note', engine.name, 'overhaul', text, 'packages table'));
  }
  if (mission.cruiseAltitude > oxygenAltitude && !hasOxygen(engine, configuration)) {
    findings.push({
      ...finding('check', engine.name, 'oxygen', 'the cruise altitude needs oxygen, and none is fitted'),
      shown: 'height',
      value: mission.cruiseAltitude,
      limit: oxygenAltitude,
      source: '14 CFR 91.211(a), more than half an hour',
    });
  }
  return findings;
}
