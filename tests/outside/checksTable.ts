/** The table "what is checked against what" of DEVELOPERS.md, made from the lists themselves. */
import { monotoneFunctions } from './monotone.ts';
import { statuses, type Topic } from './publishedValue.ts';
import { secondOpinions } from './secondOpinions.ts';
import { topics } from './topics.ts';

const start = '<!-- checks:start -->';
const end = '<!-- checks:end -->';

/** The document of a source, its section left out. */
const documentOf = (source: string) => source.split(/[,:] | ?\(/)[0]!;

function counted(names: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => `${name} (${count})`).join(', ');
}

function topicRow(topic: string, values: Topic['values'], sources: string): string {
  const byStatus = statuses.map((status) => values.filter((value) => value.status === status).length || '');
  return `| ${[topic, values.length, ...byStatus, sources].join(' | ')} |`;
}

function checks(): string {
  const all = topics.flatMap(({ values }) => values);
  const misprints = topics.flatMap((topic) => topic.misprints ?? []);
  const claims = monotoneFunctions.flatMap((each) => Object.keys(each.claims));
  const functions = new Set(monotoneFunctions.map(({ name }) => name));
  return [
    `| published values | number | ${statuses.join(' | ')} | sources |`,
    `|---|---|${statuses.map(() => '---|').join('')}---|`,
    ...topics.map(({ topic, values }) =>
      topicRow(topic, values, counted(values.map(({ source }) => documentOf(source)))),
    ),
    topicRow('all', all, ''),
    '',
    'Read: seen in the document or in a stored copy. Secondary: quoted by somebody else. Derived: computed by another',
    'route from what the source defines. From memory: not seen.',
    `${misprints.length} misprints of sources stand as values that must not come out:`,
    `${misprints.map(({ what, printed, source }) => `${what}, ${printed} (${source})`).join('; ')}.`,
    '',
    '| second opinion on | from | in |',
    '|---|---|---|',
    ...secondOpinions.map(({ what, program, file }) => `| ${what} | ${program} | ${file} |`),
    '',
    `Properties: ${claims.length} directions in which a result must go, of ${functions.size} custom functions (tests/outside/monotone.ts);`,
    'what else must hold for any numbers stands in functionProperties, weightProperties, comparisonProperties and',
    'comparisonDirections beside it.',
  ].join('\n');
}

/** The document with what stands between its two markers replaced. @throws Error when it has not both markers once */
export function withChecks(document: string): string {
  const [before, rest, ...more] = document.split(start);
  const [, after, ...others] = (rest ?? '').split(end);
  if (before === undefined || after === undefined || more.length + others.length > 0)
    throw new Error(`the document must have ${start} and ${end} once`);
  return `${before}${start}\n${checks()}\n${end}${after}`;
}
