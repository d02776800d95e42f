/** The element of the page with that id. */
export function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page lacks #${id}`);
  return found;
}

/** Says something about the work as a whole. */
export function say(text: string, isFailure = false): void {
  const status = byId('status');
  status.textContent = text;
  status.classList.toggle('failed', isFailure);
}

export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
