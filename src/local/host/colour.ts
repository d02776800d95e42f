/** @throws Error for a colour by name: both hosts know it, but not by the same names */
export function hexColour(colour: string | null): string | undefined {
  if (colour === null) return undefined;
  if (!/^#[0-9a-f]{6}$/i.test(colour)) throw new Error(`a colour must be #rrggbb or null, got ${colour}`);
  return colour;
}
