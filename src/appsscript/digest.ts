/** SHA-256 of a text in UTF-8, in hexadecimal. */
export function digestOf(text: string): string {
  const { DigestAlgorithm, Charset } = Utilities;
  const bytes = Utilities.computeDigest(DigestAlgorithm.SHA_256, text, Charset.UTF_8);
  return bytes.map((byte) => (byte & 0xff).toString(16).padStart(2, '0')).join('');
}
