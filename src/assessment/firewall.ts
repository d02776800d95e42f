import { firewallMoment } from '../engineering/mount.ts';
import type { Package } from '../tables/packages.ts';
import { standardGravity } from '../units.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { Finding } from './finding.ts';
import type { Powerplant } from './powerplant.ts';

const firewallMomentGrowth = 0.1; // a tenth more than the baseline wants a stress check; common practice, no source

/**
 * Weight and moment of what lies ahead of the firewall: powerplant, and options that sit there or are taken from there, each
 * whole by where its CG lies.
 */
export function aheadOfFirewall(
  context: Context,
  { items }: Powerplant,
  { equipment }: Configuration,
): { weight: number; moment: number } {
  const { firewallArm } = context.catalogue.airframe;
  const ahead = [...items, ...equipment].filter(({ arm }) => arm < firewallArm);
  const masses = ahead.map(({ weight, arm }) => ({ mass: weight, arm }));
  return {
    weight: ahead.reduce((sum, { weight }) => sum + weight, 0),
    moment: firewallMoment(masses, firewallArm, 1) / standardGravity,
  };
}

/** Weight and moment ahead of the firewall against what it is approved for, or against the baseline's. */
export function firewallFindings(
  context: Context,
  engine: Package,
  own: { weight: number; moment: number },
  baseline: { moment: number },
): Finding[] {
  const { airframe } = context.catalogue;
  const source = 'airframe table: limit ahead of the firewall';
  const findings: Finding[] = [];
  const over = (
    subject: string,
    shown: 'weight' | 'moment',
    value: number,
    limit: number | undefined,
  ): Finding | undefined =>
    limit !== undefined && value > limit * (1 + 1e-9)
      ? {
          gravity: 'stop',
          package: engine.name,
          subject,
          shown,
          value,
          limit,
          source,
          text: `${Math.round((value / limit - 1) * 100)} % beyond what mount and firewall are approved for: wants a stress check by someone qualified`,
        }
      : undefined;
  const weight = over(
    'weight ahead of firewall',
    'weight',
    own.weight,
    airframe.maximumFirewallForwardWeight,
  );
  const moment = over('moment ahead of firewall', 'moment', own.moment, airframe.maximumFirewallMoment);
  if (weight) findings.push(weight);
  if (moment) findings.push(moment);
  if (
    airframe.maximumFirewallMoment === undefined &&
    own.moment > baseline.moment * (1 + firewallMomentGrowth)
  ) {
    findings.push({
      gravity: 'check',
      package: engine.name,
      subject: 'moment ahead of firewall',
      shown: 'moment',
      value: own.moment,
      limit: baseline.moment,
      source: `the baseline ${context.baseline.name}; the airframe table states no limit`,
      text: `${Math.round((own.moment / baseline.moment - 1) * 100)} % more than the baseline's: mount and firewall want a stress check`,
    });
  }
  return findings;
}
