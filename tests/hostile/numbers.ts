/** Every number of a result by its path. */

/** Not results: the row a record stood in, what all packages share, what is told in words. */
const beside = ['row', 'findings', 'asked', 'context'];

export function numbersOf(
  value: unknown,
  without: readonly string[] = beside,
  path = '',
  found = new Map<string, number>(),
): Map<string, number> {
  if (typeof value === 'number') found.set(path, value);
  else if (typeof value === 'object' && value !== null && !(value instanceof Map || value instanceof Set)) {
    for (const [key, inner] of Object.entries(value))
      if (!without.includes(key)) numbersOf(inner, without, `${path}.${key}`, found);
  }
  return found;
}
