import { readFileSync } from 'node:fs';
import { contextOf } from '../../assessment/context.ts';
import { softwareVersion } from '../../assessment/version.ts';
import type { Catalogue } from '../../tables/catalogue.ts';
import { type PackageStyle, packageStyles } from '../../workbook/palette.ts';
import { cautionsSection, comparisonSection } from './comparisonSection.ts';
import { coolingSection } from './coolingSection.ts';
import { costSection } from './costSection.ts';
import { findingsSection } from './findingsSection.ts';
import { flightSection } from './flightSection.ts';
import { fuelSection } from './fuelSection.ts';
import { loadingSection } from './loadingSection.ts';
import { html, Markup } from './markup.ts';
import { missionSection } from './missionSection.ts';
import { rangeSection } from './rangeSection.ts';
import { type ReportData, sectionMarkup } from './section.ts';
import type { PackageLook } from './tables.ts';

/** Every package's colour and dash, the same as in the workbook. */
function packageLooks(catalogue: Catalogue): PackageLook[] {
  const { packages } = catalogue;
  const styles = packageStyles(packages.length, packages.indexOf(contextOf(catalogue).baseline));
  return packages.map(({ name }, index) => ({ name, ...(styles[index] as PackageStyle) }));
}

/** In the order in which a buyer asks. */
const sections = [
  comparisonSection,
  missionSection,
  loadingSection,
  rangeSection,
  fuelSection,
  flightSection,
  coolingSection,
  costSection,
  findingsSection,
  cautionsSection,
];

/**
 * The whole comparison as one page for a customer: it needs no other file, and prints.
 * @param block the block of a custom function of the workbook
 */
export function htmlReport(catalogue: Catalogue, block: ReportData['block'], date: Date): string {
  const style = new Markup(readFileSync(new URL('report.css', import.meta.url), 'utf8'));
  const data: ReportData = { block, packages: packageLooks(catalogue) };
  const all = sections.map((section) => section(data));
  const title = `Engine packages for the ${catalogue.airframe.name}`;
  const day = date.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  return `<!doctype html>\n${
    html`<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>
${style}</style>
</head>
<body>
<header>
<h1>${title}</h1>
<p>${day}. Computed by the firewall-forward workbook, version ${softwareVersion}. One column or curve a package; the baseline is black. “not known” stands where a figure would have to be guessed.</p>
<nav>${all.map(({ id, title: words }) => html`<a href="#${id}">${words}</a>`)}</nav>
</header>
<main>
${all.map(sectionMarkup)}
</main>
</body>
</html>`.text
  }\n`;
}
