import { isDate } from './dates.ts';
import { charsets, digestAlgorithms } from './enumerations.ts';
import { formatDate } from './formatDate.ts';
import type { GoogleCharset, GoogleDigestAlgorithm, GoogleUtilities } from './google.ts';
import { sha256 } from './sha256.ts';
import { strict } from './strict.ts';
import type { Workbook } from './workbook.ts';

export function createUtilities(workbook: Workbook): GoogleUtilities {
  return strict<GoogleUtilities>(workbook.calls, 'Utilities', {
    DigestAlgorithm: digestAlgorithms,
    Charset: charsets,

    /** Bytes as Google gives them, from −128 to 127. */
    computeDigest(algorithm: GoogleDigestAlgorithm, value: string | number[], charset?: GoogleCharset) {
      if (algorithm !== digestAlgorithms.SHA_256) {
        throw new Error(`Utilities.computeDigest: ${algorithm} is not implemented by the local host`);
      }
      return Array.from(new Int8Array(sha256(bytesOf(value, charset))));
    },

    base64Encode: (value: string | number[], charset?: GoogleCharset) =>
      btoa(Array.from(bytesOf(value, charset), (byte) => String.fromCharCode(byte)).join('')),

    base64Decode(encoded: string) {
      return Array.from(new Int8Array(Array.from(atob(encoded), (character) => character.charCodeAt(0))));
    },

    formatDate(date: unknown, timeZone: string, format: string) {
      if (!isDate(date)) throw new Error('Utilities.formatDate: the first argument must be a Date');
      return formatDate(date, timeZone, format);
    },

    getUuid: () => crypto.randomUUID(),
  });
}

/** @throws Error for text outside ASCII without a charset: what Google makes of it is not documented */
function bytesOf(value: string | number[], charset?: GoogleCharset): Uint8Array {
  if (typeof value !== 'string') return Uint8Array.from(value, (byte) => byte & 0xff);
  const bytes = new TextEncoder().encode(value);
  if (charset !== charsets.UTF_8 && bytes.length !== value.length) {
    throw new Error('text outside ASCII needs Utilities.Charset.UTF_8');
  }
  return bytes;
}
