import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  csvOfGrid,
  fileNameOf,
  gridOfCsv,
  readTableFolder,
  writeTableFolder,
} from '../../src/local/tableFolder.ts';
import { tableNames } from '../../src/tables/catalogue.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tables-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const put = (file: string, content: string | Uint8Array) => writeFileSync(join(folder, file), content);

describe('cells of a CSV text', () => {
  const cellOf = (text: string) => gridOfCsv(`${text},x\n`, 'a.csv')[0]?.[0];

  test.each([
    ['12', 12],
    ['-3.50', -3.5],
    ['+.5', 0.5],
    ['7.', 7],
    [' 12 ', 12],
    ['1e3', 1000],
    ['0x10', '0x10'],
    ['1e999', '1e999'],
    ['Infinity', 'Infinity'],
    ['25%', '25%'],
    ['5 ft', '5 ft'],
    ['true', true],
    ['FALSE', false],
    ['yes', 'yes'],
    ['', ''],
    ["'12", '12'],
    ["''tis", "'tis"],
    ['"12,5"', '12,5'],
    ['"a ""b"""', 'a "b"'],
    ['"two\nlines"', 'two\nlines'],
    ['ft²', 'ft²'],
  ])('%j', (text, cell) => expect(cellOf(text)).toBe(cell));

  test('byte order mark and Windows line ends', () => {
    expect(gridOfCsv('\ufeffweight,arm\r\nlb,in\r\n1,2\r\n', 'a.csv')).toEqual([
      ['weight', 'arm'],
      ['lb', 'in'],
      [1, 2],
    ]);
  });

  test('rows keep their number past empty ones, are filled up, and end with the last that holds something', () => {
    expect(gridOfCsv('a,b,c\n\n1\n,,\n\n', 'a.csv')).toEqual([
      ['a', 'b', 'c'],
      ['', '', ''],
      [1, '', ''],
    ]);
  });

  test('an empty file is an empty grid', () => expect(gridOfCsv('', 'a.csv')).toEqual([]));

  test('other separators and open quotes are refused', () => {
    expect(() => gridOfCsv('weight;arm\n1;2\n', 'tanks.csv')).toThrow(
      'tanks.csv: values must be separated by commas, got "weight;arm"',
    );
    expect(() => gridOfCsv('weight\tarm\n', 'tanks.csv')).toThrow('separated by commas');
    expect(() => gridOfCsv('weight,arm\n1,"2\n', 'tanks.csv')).toThrow('tanks.csv, row 2: ');
  });
});

describe('a grid as CSV text', () => {
  test('looks as a spreadsheet saves it', () => {
    expect(csvOfGrid([['a', 'b, c', true, 1.5, null, undefined]])).toBe('a,"b, c",TRUE,1.5,,\n');
    expect(csvOfGrid([['007', 'TRUE', '=1+1', '-5', "'tis"]])).toBe("'007,'TRUE,'=1+1,'-5,''tis\n");
    expect(csvOfGrid([[new Date(2025, 2, 4)]])).toBe('2025-03-04\n');
  });

  test('is read back as the same cells', () => {
    // Line ends become \n, which is what a cell of a spreadsheet holds: \r is left out.
    const text = fc
      .oneof(
        fc.string(),
        fc.string({ unit: 'grapheme' }),
        fc.constantFrom('12', ' 1', 'true', "'", '=A1', '\ufeff'),
      )
      .map((cell) => cell.replace(/\r/g, ''));
    const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0); // no −0
    const cell = fc.oneof(text, number, fc.boolean());
    const grid = fc
      .integer({ min: 1, max: 5 })
      .chain((width) => fc.array(fc.array(cell, { minLength: width, maxLength: width }), { maxLength: 6 }));
    fc.assert(
      fc.property(grid, (cells) => {
        const framed = [
          ['first', ...(cells[0] ?? []).map((_, index) => `header ${index}`)],
          ...cells.map((row) => ['row', ...row]),
        ];
        expect(gridOfCsv(csvOfGrid(framed), 'a.csv')).toEqual(framed);
      }),
    );
  });
});

describe('a folder of tables', () => {
  test('a file is named like its table', () => {
    expect(tableNames.map(fileNameOf)).toContain('fuel-points.csv');
    expect(new Set(tableNames.map(fileNameOf)).size).toBe(15);
  });

  test('what is there is read, what is missing is absent, what is no table is named', () => {
    put('tanks.csv', 'tank,arm,usable\n,in,US gal\n"wings, both",104,42\n');
    put('fuel-points.csv', '\ufeffpackage,power\r\n,%\r\nRowan,75\r\n');
    put('Prices.CSV', 'a,b\n');
    put('notes.txt', 'kept elsewhere');
    mkdirSync(join(folder, 'old'));
    const { grids, remarks } = readTableFolder(folder);
    expect(grids).toEqual({
      tanks: [
        ['tank', 'arm', 'usable'],
        ['', 'in', 'US gal'],
        ['wings, both', 104, 42],
      ],
      'fuel points': [
        ['package', 'power'],
        ['', '%'],
        ['Rowan', 75],
      ],
    });
    expect(remarks).toEqual([{ table: 'Prices.CSV', text: 'is none of the tables and is not read' }]);
  });

  test('written and read again it is the same; other files stay', () => {
    const target = join(folder, 'new', 'tables');
    const grids = {
      airframe: [
        ['attribute', 'value', 'unit', 'note'],
        ['airframe', '12', '', 'a "name"'],
        ['limit load factor', 3.8, '', ''],
      ],
      'power points': [['package'], ['']],
    };
    writeTableFolder(target, grids);
    writeFileSync(join(target, 'rates.csv'), 'attribute,value\n');
    writeTableFolder(target, { airframe: grids.airframe });
    expect(readTableFolder(target).grids).toEqual({
      airframe: grids.airframe,
      'power points': [['package']],
      rates: [['attribute', 'value']],
    });
    expect(readFileSync(join(target, 'airframe.csv'), 'utf8')).toContain("airframe,'12,,");
  });

  test('no folder, no tables, a text in another encoding', () => {
    expect(() => readTableFolder(join(folder, 'nowhere'))).toThrow('there is no folder "');
    put('notes.txt', '');
    expect(() => readTableFolder(join(folder, 'notes.txt'))).toThrow('there is no folder "');
    put('prices.csv', '');
    expect(() => readTableFolder(folder)).toThrow('holds none of the tables: airframe.csv, envelope.csv');
    put('tanks.csv', Uint8Array.from([0x66, 0x74, 0xb2, 0x2c, 0x0a])); // ft² in Windows-1252
    expect(() => readTableFolder(folder)).toThrow('tanks.csv must be UTF-8 text');
  });
});
