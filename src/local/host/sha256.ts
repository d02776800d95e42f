/**
 * SHA-256 of bytes: a browser's own works only asynchronously, and a script's `Utilities.computeDigest` does not wait.
 * @source FIPS 180-4, sections 4.1.2, 5.1.1 and 6.2; the constants are the fractional parts of roots of the first
 * primes and are computed here (sections 4.2.2 and 5.3.3)
 */
export function sha256(message: Uint8Array): Uint8Array {
  const hash = fractions(8, Math.sqrt);
  const constants = fractions(64, Math.cbrt);
  const padded = pad(message);
  const view = new DataView(padded.buffer);
  const schedule = new Uint32Array(64);

  for (let block = 0; block < padded.length; block += 64) {
    for (let t = 0; t < 16; t++) schedule[t] = view.getUint32(block + 4 * t);
    for (let t = 16; t < 64; t++) {
      const early = schedule[t - 15] as number;
      const late = schedule[t - 2] as number;
      const sigma0 = rotate(early, 7) ^ rotate(early, 18) ^ (early >>> 3);
      const sigma1 = rotate(late, 17) ^ rotate(late, 19) ^ (late >>> 10);
      schedule[t] = sigma1 + (schedule[t - 7] as number) + sigma0 + (schedule[t - 16] as number);
    }
    let [a, b, c, d, e, f, g, h] = [...hash] as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    for (let t = 0; t < 64; t++) {
      const sum1 = rotate(e, 6) ^ rotate(e, 11) ^ rotate(e, 25);
      const choice = (e & f) ^ (~e & g);
      const first = (h + sum1 + choice + (constants[t] as number) + (schedule[t] as number)) | 0;
      const sum0 = rotate(a, 2) ^ rotate(a, 13) ^ rotate(a, 22);
      const majority = (a & b) ^ (a & c) ^ (b & c);
      const second = (sum0 + majority) | 0;
      [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
    }
    for (const [index, word] of [a, b, c, d, e, f, g, h].entries())
      hash[index] = (hash[index] as number) + word;
  }

  const digest = new Uint8Array(32);
  const output = new DataView(digest.buffer);
  for (const [index, word] of hash.entries()) output.setUint32(4 * index, word);
  return digest;
}

/** The message, a one bit, zeros, and its length in bits as 64 bits. */
function pad(message: Uint8Array): Uint8Array<ArrayBuffer> {
  const length = Math.ceil((message.length + 9) / 64) * 64;
  const padded = new Uint8Array(length);
  padded.set(message);
  padded[message.length] = 0x80;
  new DataView(padded.buffer).setBigUint64(length - 8, BigInt(message.length) * 8n);
  return padded;
}

function rotate(word: number, bits: number): number {
  return (word >>> bits) | (word << (32 - bits));
}

/** First 32 bits of the fractional parts of a root of the first primes. */
function fractions(count: number, root: (prime: number) => number): Uint32Array {
  const words = new Uint32Array(count);
  let found = 0;
  for (let candidate = 2; found < count; candidate++) {
    const isPrime = Array.from({ length: candidate - 2 }, (_, index) => index + 2).every(
      (n) => candidate % n > 0,
    );
    if (isPrime) words[found++] = (root(candidate) % 1) * 2 ** 32;
  }
  return words;
}
