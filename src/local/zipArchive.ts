import { crc32, deflateRawSync, inflateRawSync } from 'node:zlib';

/**
 * Rewrites texts in a zip archive; entries that are not changed are copied as they are.
 * @param change the new text of an entry, or undefined to leave it
 * @source PKWARE APPNOTE 6.3, sections 4.3.7 (local header), 4.3.12 (central directory), 4.3.16 (end record); from memory
 */
export function rewriteZip(
  archive: Uint8Array,
  change: (name: string, text: () => string) => string | undefined,
): Uint8Array {
  const entries = readEntries(Buffer.from(archive)).map((entry) => {
    const text = change(entry.name, () =>
      (entry.method === deflated ? inflateRawSync(entry.data) : entry.data).toString('utf8'),
    );
    return text === undefined ? entry : packed(entry.name, text);
  });
  const locals: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const entry of entries) {
    const local = Buffer.concat([header(entry), Buffer.from(entry.name), entry.data]);
    directory.push(directoryHeader(entry, offset), Buffer.from(entry.name));
    locals.push(local);
    offset += local.length;
  }
  const directorySize = directory.reduce((sum, part) => sum + part.length, 0);
  return Buffer.concat([...locals, ...directory, endRecord(entries.length, directorySize, offset)]);
}

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly checksum: number;
  readonly size: number;
  readonly data: Buffer;
}

const deflated = 8;
const localSignature = 0x04034b50;
const directorySignature = 0x02014b50;
const endSignature = 0x06054b50;
const version = 20; // 2.0: deflate
const utf8Names = 1 << 11;

function readEntries(archive: Buffer): Entry[] {
  const end = archive.lastIndexOf(Buffer.from([0x50, 0x4b, 0x05, 0x06]));
  const count = archive.readUInt16LE(end + 10);
  let at = archive.readUInt32LE(end + 16);
  return Array.from({ length: count }, () => {
    const nameLength = archive.readUInt16LE(at + 28);
    const local = archive.readUInt32LE(at + 42);
    const dataAt = local + 30 + archive.readUInt16LE(local + 26) + archive.readUInt16LE(local + 28);
    const entry = {
      name: archive.toString('utf8', at + 46, at + 46 + nameLength),
      method: archive.readUInt16LE(at + 10),
      checksum: archive.readUInt32LE(at + 16),
      size: archive.readUInt32LE(at + 24),
      data: archive.subarray(dataAt, dataAt + archive.readUInt32LE(at + 20)),
    };
    at += 46 + nameLength + archive.readUInt16LE(at + 30) + archive.readUInt16LE(at + 32);
    return entry;
  });
}

function packed(name: string, text: string): Entry {
  const bytes = Buffer.from(text);
  return { name, method: deflated, checksum: crc32(bytes), size: bytes.length, data: deflateRawSync(bytes) };
}

/** Local file header. The date is left at zero: the same workbook gives the same file. */
function header({ name, method, checksum, size, data }: Entry): Buffer {
  const bytes = Buffer.alloc(30);
  bytes.writeUInt32LE(localSignature, 0);
  bytes.writeUInt16LE(version, 4);
  bytes.writeUInt16LE(utf8Names, 6);
  bytes.writeUInt16LE(method, 8);
  bytes.writeUInt32LE(checksum, 14);
  bytes.writeUInt32LE(data.length, 18);
  bytes.writeUInt32LE(size, 22);
  bytes.writeUInt16LE(Buffer.byteLength(name), 26);
  return bytes;
}

function directoryHeader(entry: Entry, offset: number): Buffer {
  const bytes = Buffer.alloc(46);
  bytes.writeUInt32LE(directorySignature, 0);
  bytes.writeUInt16LE(version, 4);
  header(entry).copy(bytes, 6, 4, 28);
  bytes.writeUInt32LE(offset, 42);
  return bytes;
}

function endRecord(count: number, directorySize: number, directoryOffset: number): Buffer {
  const bytes = Buffer.alloc(22);
  bytes.writeUInt32LE(endSignature, 0);
  bytes.writeUInt16LE(count, 8);
  bytes.writeUInt16LE(count, 10);
  bytes.writeUInt32LE(directorySize, 12);
  bytes.writeUInt32LE(directoryOffset, 16);
  return bytes;
}
