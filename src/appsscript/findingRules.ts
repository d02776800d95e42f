import { noResult } from '../assessment/faultsBlock.ts';
import { largestPackageCount } from '../workbook/layout.ts';
import { colours, packageStyles } from '../workbook/palette.ts';
import type { Range, Sheet } from './places.ts';
import type { Packages } from './resultLooks.ts';

type Rule = GoogleAppsScript.Spreadsheet.ConditionalFormatRule;

/** What a cell that says something looks like: the word and its mark stand there too, colour is the third sign. */
interface Saying {
  readonly when: 'TEXT_STARTS_WITH' | 'TEXT_EQUAL_TO' | 'TEXT_CONTAINS';
  readonly text: string;
  readonly fill?: string;
  readonly ink?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
}

const begins = (text: string): Pick<Saying, 'when' | 'text'> => ({ when: 'TEXT_STARTS_WITH', text });
const equals = (text: string): Pick<Saying, 'when' | 'text'> => ({ when: 'TEXT_EQUAL_TO', text });

const findings: readonly Saying[] = [
  { ...begins('\u25a0'), fill: colours.stopFill, bold: true },
  { ...begins('FAIL'), fill: colours.stopFill, bold: true },
  { ...begins('TOO HOT'), fill: colours.stopFill, bold: true },
  { ...equals('NO'), fill: colours.stopFill, bold: true },
  { ...begins('\u25b2'), fill: colours.checkFill },
  { ...begins(noResult), fill: colours.checkFill, bold: true },
  { ...begins('\u00b7 Note'), ink: colours.noteInk },
  { ...equals('pass'), ink: colours.passInk },
  { ...begins('pass '), ink: colours.passInk },
  { ...begins('not known'), ink: colours.unknownInk, italic: true },
  { when: 'TEXT_CONTAINS', text: 'default', ink: colours.unknownInk, italic: true },
];

const sayingsOf = ({ names, baseline }: Packages): Saying[] =>
  packageStyles(names.length, baseline).map(({ colour, ink }, index) => ({
    ...equals(names[index] as string),
    fill: colour,
    ink,
  }));

function rule({ when, text, fill, ink, bold, italic }: Saying, ranges: Range[]): Rule {
  const builder = SpreadsheetApp.newConditionalFormatRule();
  if (when === 'TEXT_STARTS_WITH') builder.whenTextStartsWith(text);
  else if (when === 'TEXT_EQUAL_TO') builder.whenTextEqualTo(text);
  else builder.whenTextContains(text);
  if (fill) builder.setBackground(fill);
  if (ink) builder.setFontColor(ink);
  if (bold) builder.setBold(true);
  if (italic) builder.setItalic(true);
  return builder.setRanges(ranges).build();
}

/** The looks of findings over blocks, and the packages' colours over their heads: made once, laid on every sheet. */
export class BlockRules {
  readonly #sayings: readonly { readonly saying: Saying; readonly isHead: boolean }[];
  readonly #made = new Map<Saying, Rule>();
  /** What the workbook's own rules are known by; a package's also by its colour, for its name may have been another. */
  readonly #signatures: ReadonlySet<string>;
  readonly #colours: ReadonlySet<string>;

  constructor(packages: Packages) {
    const ofPackages = sayingsOf(packages);
    this.#sayings = [
      ...findings.map((saying) => ({ saying, isHead: false })),
      ...ofPackages.map((saying) => ({ saying, isHead: true })),
    ];
    this.#signatures = new Set([...findings, ...ofPackages].map(({ when, text }) => `${when} ${text}`));
    const count = packages.names.length + largestPackageCount;
    this.#colours = new Set(packageStyles(count, 0).map(({ colour }) => colour));
  }

  #on(saying: Saying, ranges: Range[]): Rule {
    const made = this.#made.get(saying);
    if (made) return made.copy().setRanges(ranges).build();
    const first = rule(saying, ranges);
    this.#made.set(saying, first);
    return first;
  }

  #isOwn(other: Rule): boolean {
    const condition = other.getBooleanCondition();
    if (!condition) return false;
    const type = String(condition.getCriteriaType());
    if (this.#signatures.has(`${type} ${condition.getCriteriaValues().join()}`)) return true;
    return type === 'TEXT_EQUAL_TO' && this.#colours.has(condition.getBackground()?.toLowerCase() ?? '');
  }

  /** Rules that a person added stay, behind these. */
  setOn(sheet: Sheet, blocks: Range[], heads: Range[]): void {
    const rules = this.#sayings
      .filter(({ isHead }) => !isHead || heads.length > 0)
      .map(({ saying, isHead }) => this.#on(saying, isHead ? heads : blocks));
    const others = sheet.getConditionalFormatRules().filter((each) => !this.#isOwn(each));
    sheet.setConditionalFormatRules([...rules, ...others]);
  }
}
