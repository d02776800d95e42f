/**
 * The document with what stands between the two markers of a name replaced.
 * @throws Error when it has not both markers once
 */
export function withBlock(document: string, name: string, block: string): string {
  const [start, end] = [`<!-- ${name}:start -->`, `<!-- ${name}:end -->`];
  const [before, rest, ...more] = document.split(start);
  const [, after, ...others] = (rest ?? '').split(end);
  if (before === undefined || after === undefined || more.length + others.length > 0) {
    throw new Error(`the document must have ${start} and ${end} once`);
  }
  return `${before}${start}\n${block}\n${end}${after}`;
}
