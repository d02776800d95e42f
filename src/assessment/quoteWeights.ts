import type { Assessment, Comparison } from './assess.ts';
import { cgOnMac } from './cgOnMac.ts';
import { loadingFindings } from './loadingCheck.ts';
import type { Banded } from './payload.ts';
import { type QuoteSection, row, section, shownNumber, totalRow } from './quoteSection.ts';
import { pictured } from './quoteText.ts';
import { lightestOf, worstCause } from './worstCause.ts';

/** Empty weight, useful load and payload: nominal, as expected, and to be counted on. */
export function weightSection({ context }: Comparison, { empty, payload }: Assessment): QuoteSection {
  const { display } = context;
  const { mass } = empty;
  const emptyWeight: Banded = {
    nominal: mass.nominal.weight,
    expected: mass.expected.weight,
    countedOn: mass.expected.weight + mass.weightHalfWidth,
  };
  const cells = ({ nominal, expected, countedOn }: Banded, shown: 'weight' | 'payload') =>
    [nominal, expected, countedOn].map((value) => shownNumber(display, shown, value));
  const fuel = display.text('fuel', payload.fuelVolume);
  return section(
    'Weight and payload',
    ['', 'Nominal', 'Expected', 'To be counted on', 'Unit'],
    [
      row('Empty weight', ...cells(emptyWeight, 'weight'), display.unit('weight')),
      row('Useful load', ...cells(payload.usefulLoad, 'payload'), display.unit('payload')),
      totalRow(
        `Payload with full tanks, ${fuel} usable`,
        ...cells(payload.fullFuel, 'payload'),
        display.unit('payload'),
      ),
    ],
    [
      'Nominal: the weights of the tables added up. Expected: with the growth that such weights show until the aircraft is weighed. To be counted on: heavier by as much as they may be off.',
    ],
  );
}

/** Empty CG, the least margins of all loadings, and the named loadings. */
export function balanceSections({ context }: Comparison, assessment: Assessment): QuoteSection[] {
  const { display } = context;
  const { empty, balance } = assessment;
  const arm = display.unit('arm');
  const percentMac = cgOnMac(context.catalogue.airframe, empty.cg);
  const margin = (side: 'forward' | 'aft') => {
    const critical = balance.margins?.[side];
    const cause =
      critical && balance.polygon
        ? ` (${worstCause(critical, lightestOf(balance.polygon)).clause}, at ${display.text('weight', critical.weight)})`
        : '';
    return row(
      `Least margin to the ${side} limit, of every loading allowed${cause}`,
      shownNumber(display, 'arm', critical?.margin),
      arm,
    );
  };
  const loadings = balance.loadings.map((check) => {
    const [stopped] = loadingFindings(context, assessment.package, [check]);
    return row(
      check.name,
      check.passes ? 'pass' : 'FAIL',
      shownNumber(display, 'arm', check.worst?.margin),
      shownNumber(display, 'weight', check.takeoff.weight),
      shownNumber(display, 'arm', check.takeoff.cg),
      shownNumber(display, 'weight', check.zeroFuel.weight),
      shownNumber(display, 'arm', check.zeroFuel.cg),
      stopped?.text ?? '',
    );
  });
  const weight = display.unit('weight');
  return [
    section(
      'Centre of gravity',
      ['', 'Value', 'Unit'],
      [
        row('Empty CG, aft of datum', shownNumber(display, 'arm', empty.cg), arm),
        row('Known to, either way', shownNumber(display, 'arm', empty.expectedCg.halfWidth), arm),
        row('Empty CG, part of MAC', shownNumber(display, 'percent', percentMac), '%'),
        margin('forward'),
        margin('aft'),
      ],
      ['Margins are positive inside the limit.'],
    ),
    section(
      pictured,
      [
        'Loading',
        'Verdict',
        `Least CG margin, ${arm}`,
        `Takeoff weight, ${weight}`,
        `Takeoff CG, ${arm}`,
        `Zero-fuel weight, ${weight}`,
        `Zero-fuel CG, ${arm}`,
        'In words',
      ],
      loadings.length > 0 ? loadings : [row('no loadings are named', '', '', '', '', '', '', '')],
      ['With nominal weights.'],
    ),
  ];
}
