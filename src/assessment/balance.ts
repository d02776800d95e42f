import { type Envelope, envelopeFrom, heaviest } from '../engineering/envelope.ts';
import type { LoadingPolygon } from '../engineering/loadingPolygon.ts';
import { type WorstMargins, worstMargins } from '../engineering/worstMargin.ts';
import type { Package } from '../tables/packages.ts';
import type { Configuration } from './configuration.ts';
import type { Context } from './context.ts';
import type { EmptyAircraft } from './emptyAircraft.ts';
import { everyLoading, heaviestLoading } from './everyLoading.ts';
import type { Finding } from './finding.ts';
import { checkLoading, envelopeSource, type LoadingCheck, loadingFindings } from './loadingCheck.ts';
import { tankStations } from './loadStations.ts';
import { lightestOf, worstCause } from './worstCause.ts';

/** Every loading at once, and the named ones. */
export interface Balance {
  readonly envelope: Envelope;
  /** undefined when the least loads alone are beyond a maximum weight */
  readonly polygon: LoadingPolygon | undefined;
  readonly margins: WorstMargins | undefined;
  readonly loadings: readonly LoadingCheck[];
  readonly findings: readonly Finding[];
}

function marginFindings(
  context: Context,
  engine: Package,
  empty: EmptyAircraft,
  polygon: LoadingPolygon,
  margins: WorstMargins,
): Finding[] {
  const { display } = context;
  const source = envelopeSource(context);
  return [margins.forward, margins.aft].flatMap((critical): Finding[] => {
    const { side, margin, limit, cg, weight } = critical;
    const base = {
      package: engine.name,
      subject: `CG ${side} limit`,
      shown: 'arm',
      value: cg,
      limit,
      source,
    } as const;
    const where = `at ${display.text('weight', weight)}, ${worstCause(critical, lightestOf(polygon)).clause}`;
    if (margin < -1e-9) {
      const text = `some allowed loadings go ${display.text('arm', -margin)} ${side === 'aft' ? 'aft' : 'ahead'} of the limit, ${where}`;
      return [{ ...base, gravity: 'stop', text }];
    }
    if (margin < empty.expectedCg.halfWidth) {
      const text = `least margin ${display.text('arm', margin)}, ${where}: less than the empty CG is known to, ±${display.text('arm', empty.expectedCg.halfWidth)}`;
      return [{ ...base, gravity: 'check', text }];
    }
    return [];
  });
}

export function balanceOf(
  context: Context,
  engine: Package,
  empty: EmptyAircraft,
  configuration: Configuration,
): Balance {
  const { airframe, stations, envelope: points, loadings } = context.catalogue;
  const envelope = envelopeFrom(points);
  const { nominal } = empty.mass;
  const polygon = everyLoading(context, envelope, nominal, tankStations(engine, configuration.tanks));
  const margins = polygon && worstMargins(polygon, envelope);
  const checks = loadings.map((loading) =>
    checkLoading(context, envelope, nominal, engine, configuration.tanks, loading),
  );
  const tooHeavy: Finding[] = polygon
    ? []
    : [
        {
          gravity: 'stop',
          package: engine.name,
          subject: 'maximum weight',
          shown: 'weight',
          value: stations.reduce((weight, { minimum }) => weight + minimum, nominal.weight),
          limit: Math.min(
            heaviestLoading(context, envelope),
            airframe.maximumZeroFuelWeight ?? Number.POSITIVE_INFINITY,
          ),
          source: 'airframe and envelope tables',
          text: 'over the maximum weight with the least loads and no fuel',
        },
      ];
  const shortEnvelope: Finding[] =
    heaviest(envelope) < airframe.maximumTakeoffWeight * (1 - 1e-9)
      ? [
          {
            gravity: 'check',
            package: '',
            subject: 'envelope',
            shown: 'weight',
            value: heaviest(envelope),
            limit: airframe.maximumTakeoffWeight,
            source: 'envelope table',
            text: 'the CG limits end below the maximum takeoff weight; loadings are checked up to there',
          },
        ]
      : [];
  return {
    envelope,
    polygon,
    margins,
    loadings: checks,
    findings: [
      ...tooHeavy,
      ...shortEnvelope,
      ...(polygon && margins ? marginFindings(context, engine, empty, polygon, margins) : []),
      ...loadingFindings(context, engine, checks),
    ],
  };
}
