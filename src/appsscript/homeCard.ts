import { keyText, laterRevision } from '../assessment/issuedQuote.ts';
import { checkWords } from './checkWords.ts';
import { dataCheck } from './dataCheck.ts';
import { firstOf } from './dialogs.ts';
import { readLayout } from './files.ts';
import { menuItems, menuName } from './menu.ts';
import type { Book } from './places.ts';
import { type RegisterEntry, readRegister } from './quoteRegister.ts';
import { state } from './state.ts';

/** A part of the card: a heading and what stands below it. */
interface Part {
  readonly heading: string;
  readonly lines: readonly string[];
}

const mostLines = 8; // a card is narrow

function tablesPart(): Part {
  const layout = readLayout();
  const version = state.version();
  if (version === 0) return { heading: 'Tables', lines: ['This workbook is not laid out yet.'] };
  const older =
    version < layout.version ? ['An older version laid it out: lay it out again, inputs stay.'] : [];
  const { title, lines, notes } = checkWords(dataCheck(layout));
  return { heading: title, lines: [...older, ...firstOf([...lines, ...notes], mostLines)] };
}

const issuedLater = (one: RegisterEntry, other: RegisterEntry) =>
  one.number - other.number || laterRevision(one.revision, other.revision);

function quotesPart(book: Book): Part {
  const last = [...readRegister(book).entries].sort(issuedLater).pop();
  const line = last
    ? `The last is ${keyText(last)} of ${last.date}, ${last.packageName}, for ${last.customer || 'nobody named'}.`
    : 'None is issued.';
  return { heading: 'Quotes', lines: [line] };
}

const menuPart = (): Part => ({
  heading: 'In the menu: Extensions, this add-on',
  lines: menuItems.flatMap((item) => (item === null ? [] : [item[0]])),
});

/** A card's text takes a few tags of HTML (Google's guide to cards, from memory): what a person typed is none. */
const cardText = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');

function sectionOf({ heading, lines }: Part): GoogleAppsScript.Card_Service.CardSection {
  const section = CardService.newCardSection().setHeader(heading);
  for (const line of lines) section.addWidget(CardService.newTextParagraph().setText(cardText(line)));
  return section;
}

/**
 * The card that an add-on's icon beside the sheet opens, where the manifest has an `addOns` part. It tells how the
 * workbook is; a card can open neither the panel nor a dialog, so what there is to do stays in the menu.
 */
export function homeCard(): GoogleAppsScript.Card_Service.Card {
  const book = SpreadsheetApp.getActiveSpreadsheet();
  const header = CardService.newCardHeader().setTitle(menuName).setSubtitle(book.getName());
  const card = CardService.newCardBuilder().setHeader(header);
  for (const part of [tablesPart(), quotesPart(book), menuPart()]) card.addSection(sectionOf(part));
  return card.build();
}
