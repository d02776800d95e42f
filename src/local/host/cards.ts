import type {
  GoogleCard,
  GoogleCardBuilder,
  GoogleCardHeader,
  GoogleCardSection,
  GoogleCardService,
  GoogleTextParagraph,
  GoogleWidget,
} from './google.ts';
import { ObjectRecords } from './objectRecords.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

interface HeaderRecord {
  title: string;
  subtitle: string;
}

interface SectionRecord {
  heading: string;
  readonly paragraphs: string[];
}

/** A card that a script made: what an add-on shows beside the sheet. Its texts are HTML. */
export interface CardRecord {
  header: HeaderRecord | undefined;
  readonly sections: SectionRecord[];
}

const headers = new ObjectRecords<HeaderRecord>('a CardHeader');
const paragraphs = new ObjectRecords<{ text: string }>('a TextParagraph');
const sections = new ObjectRecords<SectionRecord>('a CardSection');
const cards = new ObjectRecords<CardRecord>('a Card');

export const cardOf = (card: object): CardRecord => cards.of(card);

export const createCardService = (workbook: Workbook): GoogleCardService =>
  strict<GoogleCardService>(workbook.calls, 'CardService', {
    newCardHeader: () => createHeader(workbook),
    newTextParagraph: () => createParagraph(workbook),
    newCardSection: () => createSection(workbook),
    newCardBuilder: () => createBuilder(workbook),
  });

function createHeader(workbook: Workbook): GoogleCardHeader {
  const record: HeaderRecord = { title: '', subtitle: '' };
  const header: GoogleCardHeader = strict<GoogleCardHeader>(workbook.calls, 'CardHeader', {
    setTitle(title: string) {
      record.title = title;
      return header;
    },
    setSubtitle(subtitle: string) {
      record.subtitle = subtitle;
      return header;
    },
  });
  headers.set(header, record);
  return header;
}

function createParagraph(workbook: Workbook): GoogleTextParagraph {
  const record = { text: '' };
  const paragraph: GoogleTextParagraph = strict<GoogleTextParagraph>(workbook.calls, 'TextParagraph', {
    setText(text: string) {
      record.text = text;
      return paragraph;
    },
  });
  paragraphs.set(paragraph, record);
  return paragraph;
}

function createSection(workbook: Workbook): GoogleCardSection {
  const record: SectionRecord = { heading: '', paragraphs: [] };
  const section: GoogleCardSection = strict<GoogleCardSection>(workbook.calls, 'CardSection', {
    setHeader(heading: string) {
      record.heading = heading;
      return section;
    },
    addWidget(widget: GoogleWidget) {
      record.paragraphs.push(paragraphs.of(widget).text);
      return section;
    },
  });
  sections.set(section, record);
  return section;
}

function createBuilder(workbook: Workbook): GoogleCardBuilder {
  const record: CardRecord = { header: undefined, sections: [] };
  const builder: GoogleCardBuilder = strict<GoogleCardBuilder>(workbook.calls, 'CardBuilder', {
    setHeader(header: GoogleCardHeader) {
      record.header = headers.of(header);
      return builder;
    },
    addSection(section: GoogleCardSection) {
      record.sections.push(sections.of(section));
      return builder;
    },
    /** @throws Error for a card without a section, as Google's does (from memory) */
    build() {
      if (record.sections.length === 0) throw new Error('A card needs at least one section.');
      const card = strict<GoogleCard>(workbook.calls, 'Card', {});
      cards.set(card, record);
      return card;
    },
  });
  return builder;
}
