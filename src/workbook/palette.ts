/** Colours and dashes, the same in every sheet and picture. */

/** Okabe and Ito's colour-blind-safe set, the ones that show best on white first. Black is the baseline's. */
const packageColours = ['#0072b2', '#d55e00', '#009e73', '#cc79a7', '#e69f00', '#56b4e9', '#f0e442'];
const packageDashes: readonly (readonly number[])[] = [
  [8, 3],
  [2, 3],
  [8, 3, 2, 3],
  [14, 4],
  [4, 2],
  [2, 6],
  [10, 3, 2, 3, 2, 3],
];

export interface PackageStyle {
  readonly colour: string;
  readonly dash: readonly number[] | undefined;
  /** Text on the colour. */
  readonly ink: string;
}

/** How each of `count` packages is drawn: the baseline in solid black. */
export function packageStyles(count: number, baseline: number): PackageStyle[] {
  const others = Array.from({ length: count }, (_, index) => index).filter((index) => index !== baseline);
  return Array.from({ length: count }, (_, index) => {
    if (index === baseline) return { colour: '#000000', dash: undefined, ink: '#ffffff' };
    const at = others.indexOf(index) % packageColours.length;
    return {
      colour: packageColours[at] as string,
      dash: packageDashes[at],
      ink: at < 3 ? '#ffffff' : '#000000',
    };
  });
}

/** Limits and envelopes. */
export const limitColour = '#444444';

export const colours = {
  inputFill: '#eaf3fa',
  inputFrame: '#8a8a8a',
  headerFill: '#e8e8e8',
  help: '#5f5f5f',
  stopFill: '#f4c7b8',
  checkFill: '#fde9b5',
  noteInk: '#5f5f5f',
  passInk: '#00543c',
  unknownInk: '#7a4b00',
} as const;

/** Parts of a stack, neighbours apart in lightness too. */
export const groupColours = [
  '#0072b2',
  '#e69f00',
  '#009e73',
  '#56b4e9',
  '#d55e00',
  '#f0e442',
  '#cc79a7',
  '#bbbbbb',
  '#444444',
];
