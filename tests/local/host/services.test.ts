/** Properties, lock, utilities, pages and dialogs. */
import { describe, expect, test } from 'vitest';
import { sha256 } from '../../../src/local/host/sha256.ts';
import { evaluate, evaluateIn, hostWith } from './support.ts';

describe('document properties', () => {
  const store = 'const store = PropertiesService.getDocumentProperties();';

  test('are kept from run to run', () => {
    const host = hostWith('');
    evaluateIn(host, `${store} store.setProperty('quote', '7').setProperties({ digest: 'ab', other: '' });`);
    expect(
      evaluateIn(
        host,
        `${store} const all = store.getProperties(); store.deleteProperty('other');
         return [store.getProperty('quote'), store.getProperty('none'), all, store.getKeys()];`,
      ),
    ).toEqual(['7', null, { quote: '7', digest: 'ab', other: '' }, ['quote', 'digest']]);
  });

  test('can be replaced as a whole, and deleted', () => {
    expect(
      evaluate(`${store} store.setProperty('a', '1').setProperties({ b: '2' }, true);
        const keys = store.getKeys(); return [keys, store.deleteAllProperties().getKeys()];`),
    ).toEqual([['b'], []]);
  });

  // Google's quotas page: 9 kB a value, 500 kB a store (read by the host's author from memory)
  test.each([
    ["store.setProperty('a', 'x'.repeat(9 * 1024))", null],
    ["store.setProperty('a', 'x'.repeat(9 * 1024 + 1))", 'Argument too large'],
    ["store.setProperty('a', '²'.repeat(9 * 512 + 1))", 'Argument too large'],
    ["for (let i = 0; i < 55; i++) store.setProperty('key' + i, 'x'.repeat(9 * 1024))", null],
    ["for (let i = 0; i < 56; i++) store.setProperty('key' + i, 'x'.repeat(9 * 1024))", '500 kB'],
    ["store.setProperty('a', 1)", 'must be text, got number'],
    ['PropertiesService.getUserProperties()', 'PropertiesService.getUserProperties is not implemented'],
  ])('%s', (code, message) => {
    const attempt = () => evaluate(`${store} ${code};`);
    if (message === null) expect(attempt).not.toThrow();
    else expect(attempt).toThrow(message);
  });
});

describe('the document lock', () => {
  const lock = 'const lock = LockService.getDocumentLock();';

  test('is taken once by a run, and given back', () => {
    expect(
      evaluate(`${lock} const before = lock.hasLock(); const taken = lock.tryLock(10); const held = lock.hasLock();
        lock.waitLock(10); lock.releaseLock(); return [before, taken, held, lock.hasLock()];`),
    ).toEqual([false, true, true, false]);
  });

  test('is given back when the run ends, even by an error', () => {
    const host = hostWith('');
    expect(() => evaluateIn(host, `${lock} lock.waitLock(10); throw new Error('stop');`)).toThrow('stop');
    expect(evaluateIn(host, `${lock} return lock.tryLock(10);`)).toBe(true);
  });

  test('held elsewhere is not had', () => {
    const host = hostWith('');
    host.workbook.lock.isHeldElsewhere = true;
    expect(evaluateIn(host, `${lock} return [lock.tryLock(10), lock.hasLock()];`)).toEqual([false, false]);
    expect(() => evaluateIn(host, `${lock} lock.waitLock(10);`)).toThrow('Lock timeout');
  });

  test('a second run in the midst of the first does not get it', () => {
    const script = `
      function issue() {
        const lock = LockService.getDocumentLock();
        if (!lock.tryLock(100)) return 'busy';
        const store = PropertiesService.getDocumentProperties();
        const number = Number(store.getProperty('number') ?? 0) + 1;
        store.setProperty('number', String(number));
        return number;
      }`;
    const host = hostWith(script);
    const second: unknown[] = [];
    host.workbook.calls.afterCall(4, () => second.push(host.run('issue'))); // after getProperty
    expect(host.run('issue')).toBe(1);
    expect(second).toEqual(['busy']);
    expect(host.run('issue')).toBe(2);
  });
});

describe('digests and encodings', () => {
  const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');

  // FIPS 180-4 example values as published by NIST for SHA-256 ("abc", the 448-bit message, a million a): from memory
  test.each([
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('SHA-256 of %.10s', (text, expected) => {
    expect(hex(sha256(new TextEncoder().encode(text)))).toBe(expected);
  });

  test('a digest is signed bytes', () => {
    const bytes = evaluate(
      `return Utilities.computeDigest(Utilities.DigestAlgorithm.SHA_256, 'abc');`,
    ) as number[];
    expect(bytes.slice(0, 4)).toEqual([0xba - 256, 0x78, 0x16, 0xbf - 256]);
    expect(bytes.length).toBe(32);
  });

  test.each([
    ["Utilities.computeDigest(Utilities.DigestAlgorithm.MD5, 'abc')", 'MD5 is not implemented'],
    ["Utilities.computeDigest(Utilities.DigestAlgorithm.SHA_256, '−1')", 'needs Utilities.Charset.UTF_8'],
  ])('%s throws', (code, message) => {
    expect(() => evaluate(code)).toThrow(message);
  });

  // RFC 4648, section 10
  test.each([
    ['f', 'Zg=='],
    ['foobar', 'Zm9vYmFy'],
  ])('base64 of %s', (text, expected) => {
    expect(evaluate(`return Utilities.base64Encode('${text}');`)).toBe(expected);
    expect(evaluate(`return String.fromCharCode(...Utilities.base64Decode('${expected}'));`)).toBe(text);
  });

  test('base64 of UTF-8', () => {
    expect(evaluate("return Utilities.base64Encode('−', Utilities.Charset.UTF_8);")).toBe('4oiS'); // e2 88 92
  });
});

describe('dates as text', () => {
  test.each([
    ['yyyy-MM-dd HH:mm:ss', '2024-02-29 14:05:09'],
    ["d MMM yyyy 'at' h:mm a", '29 Feb 2024 at 2:05 PM'],
    ['EEEE, MMMM d, yy', 'Thursday, February 29, 24'],
    ["hh 'o''clock'", "02 o'clock"],
  ])('%s', (pattern, expected) => {
    const date = 'new Date(Date.UTC(2024, 1, 29, 14, 5, 9))';
    expect(evaluate(`return Utilities.formatDate(${date}, 'UTC', ${JSON.stringify(pattern)});`)).toBe(
      expected,
    );
  });

  test('midnight, and another zone', () => {
    const date = 'new Date(Date.UTC(2024, 1, 29, 0, 30))';
    expect(evaluate(`return Utilities.formatDate(${date}, 'UTC', 'HH:mm');`)).toBe('00:30');
    expect(evaluate(`return Utilities.formatDate(${date}, 'America/Chicago', 'yyyy-MM-dd HH:mm');`)).toBe(
      '2024-02-28 18:30',
    );
  });

  test('letters that are not known throw', () => {
    expect(() => evaluate("Utilities.formatDate(new Date(), 'UTC', 'QQ');")).toThrow(
      "'QQ' is not implemented",
    );
  });
});

describe('pages, menus and dialogs', () => {
  const script = `
    function onOpen() {
      const ui = SpreadsheetApp.getUi();
      ui.createMenu('Packages').addItem('Panel', 'showPanel').addSeparator()
        .addSubMenu(ui.createMenu('Quote').addItem('Issue', 'ask')).addToUi();
    }
    function showPanel() {
      SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile('sidebar').setTitle('Packages'));
    }
    function print() {
      const page = HtmlService.createHtmlOutput('<p>Quote</p>').append('<p>2</p>').setWidth(600).setHeight(400);
      SpreadsheetApp.getUi().showModalDialog(page, 'Quote 7');
    }
    function ask() {
      const ui = SpreadsheetApp.getUi();
      const button = ui.alert('Issue quote?', 'It can not be taken back.', ui.ButtonSet.YES_NO);
      return button === ui.Button.YES;
    }
    function tell() { return SpreadsheetApp.getUi().alert('Done') === SpreadsheetApp.getUi().Button.OK; }
    function name() { return SpreadsheetApp.getUi().prompt('Name?').getResponseText(); }
    function brokenMenu() { SpreadsheetApp.getUi().createAddonMenu().addItem('Gone', 'gone').addToUi(); }
    function toast() { SpreadsheetApp.getActive().toast('Laid out', 'Workbook', 3); }`;
  const host = () => hostWith(script, [], { sidebar: '<h1>Panel</h1>' });

  test('a menu is recorded', () => {
    const opened = host();
    opened.run('onOpen');
    expect(opened.workbook.ui.menus).toEqual([
      {
        caption: 'Packages',
        items: [
          { kind: 'item', caption: 'Panel', functionName: 'showPanel' },
          { kind: 'separator' },
          {
            kind: 'menu',
            menu: { caption: 'Quote', items: [{ kind: 'item', caption: 'Issue', functionName: 'ask' }] },
          },
        ],
      },
    ]);
  });

  test('a menu item without its function throws', () => {
    expect(() => host().run('brokenMenu')).toThrow('no function gone');
  });

  test('a panel and a dialog are recorded', () => {
    const shown = host();
    shown.run('showPanel');
    shown.run('print');
    expect(shown.workbook.ui.sidebars).toMatchObject([{ content: '<h1>Panel</h1>', title: 'Packages' }]);
    expect(shown.workbook.ui.dialogs).toMatchObject([
      { title: 'Quote 7', isModal: true, page: { content: '<p>Quote</p><p>2</p>', width: 600, height: 400 } },
    ]);
  });

  test('alerts get the prepared answers in turn', () => {
    const asked = host();
    asked.workbook.ui.answers.push({ button: 'YES' }, { button: 'NO' });
    expect([asked.run('ask'), asked.run('ask')]).toEqual([true, false]);
    expect(asked.workbook.ui.alerts[0]).toEqual({
      title: 'Issue quote?',
      prompt: 'It can not be taken back.',
      buttons: 'YES_NO',
    });
    expect(() => asked.run('ask')).toThrow("no answer was prepared for 'It can not be taken back.'");
  });

  test('an alert with OK alone needs no answer, a prompt takes text', () => {
    const asked = host();
    expect(asked.run('tell')).toBe(true);
    asked.workbook.ui.answers.push({ button: 'OK', text: 'Ada' });
    expect(asked.run('name')).toBe('Ada');
  });

  test('a toast is recorded, a missing page throws', () => {
    const shown = hostWith(script);
    shown.run('toast');
    expect(shown.workbook.ui.toasts).toEqual([{ message: 'Laid out', title: 'Workbook' }]);
    expect(() => shown.run('showPanel')).toThrow('No HTML file named sidebar was found.');
  });
});
