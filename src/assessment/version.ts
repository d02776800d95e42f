/** Of the whole software, printed on every quote. A test holds it against package.json. */
export const softwareVersion = '0.1.0';
