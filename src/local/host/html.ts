import type { GoogleHtmlOutput, GoogleHtmlService } from './google.ts';
import { ObjectRecords } from './objectRecords.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

export interface HtmlPage {
  content: string;
  title: string;
  width: number | undefined;
  height: number | undefined;
}

const pages = new ObjectRecords<HtmlPage>('an HtmlOutput');

export const pageOf = (output: GoogleHtmlOutput): HtmlPage => pages.of(output);

/** @param files the project's HTML files by name, without the ending */
export function createHtmlService(
  workbook: Workbook,
  files: Readonly<Record<string, string>>,
): GoogleHtmlService {
  return strict<GoogleHtmlService>(workbook.calls, 'HtmlService', {
    createHtmlOutput: (html: unknown = '') => {
      if (typeof html !== 'string')
        throw new Error('HtmlService.createHtmlOutput of a blob is not implemented by the local host');
      return createOutput(workbook, html);
    },
    createHtmlOutputFromFile(name: string) {
      const content = files[name];
      if (content === undefined) throw new Error(`No HTML file named ${name} was found.`);
      return createOutput(workbook, content);
    },
  });
}

function createOutput(workbook: Workbook, content: string): GoogleHtmlOutput {
  const page: HtmlPage = { content, title: '', width: undefined, height: undefined };
  const output: GoogleHtmlOutput = strict<GoogleHtmlOutput>(workbook.calls, 'HtmlOutput', {
    getContent: () => page.content,
    setContent(text: string) {
      page.content = text;
      return output;
    },
    append(text: string) {
      page.content += text;
      return output;
    },
    getTitle: () => page.title,
    setTitle(title: string) {
      page.title = title;
      return output;
    },
    setWidth(width: number) {
      page.width = width;
      return output;
    },
    setHeight(height: number) {
      page.height = height;
      return output;
    },
  });
  pages.set(output, page);
  return output;
}
