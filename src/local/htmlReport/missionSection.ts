import { blockParts, partNamed } from './blockParts.ts';
import { html, nothing } from './markup.ts';
import { type ReportData, type Section, withTitle } from './section.ts';
import { packagesTable, recordsTable, sayings } from './tables.ts';

export function missionSection({ block, packages }: ReportData): Section {
  const title = 'Which package flies the mission, and why does another not?';
  const parts = blockParts(block('MISSION_CHECK'));
  const [first] = parts;
  const [header = [], ...verdicts] = first?.rows ?? [];
  if (parts.length === 1) return { id: 'mission', title, body: html`<p>${String(header[0])}</p>` };
  const table = (heading: string) => {
    const part = partNamed(parts, heading);
    return withTitle(part.title, packagesTable(part.rows, packages));
  };
  const words = (heading: string) => {
    const part = partNamed(parts, heading);
    return withTitle(part.title, sayings(part.rows));
  };
  const options = partNamed(parts, 'What each option does');
  return {
    id: 'mission',
    title,
    body: html`${withTitle(String(header[0]), packagesTable(verdicts, packages))}
${words('In words')}
${words('What would let it go')}
${table('What is left of each condition')}
${table('The flights')}
${words('Seated')}
${options.rows.length > 2 ? withTitle(options.title, recordsTable(options.rows)) : nothing}`,
  };
}
