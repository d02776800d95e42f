/** What is left of a list when the texts of another are taken out of it, each as often as it stands there. */
export function missing(before: Iterable<string>, after: Iterable<string>): string[] {
  const left = new Map<string, number>();
  for (const text of after) left.set(text, (left.get(text) ?? 0) + 1);
  return [...before].filter((text) => {
    const count = left.get(text) ?? 0;
    left.set(text, count - 1);
    return count <= 0;
  });
}
