/** What the tests use of jsdom; its own types are for another version. */
declare module 'jsdom' {
  export class VirtualConsole {}
  export class JSDOM {
    constructor(
      html: string,
      options: {
        runScripts: 'dangerously';
        virtualConsole: VirtualConsole;
        beforeParse: (window: Window & typeof globalThis) => void;
      },
    );
    readonly window: Window & typeof globalThis;
  }
}
