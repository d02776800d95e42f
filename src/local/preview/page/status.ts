import { byId } from '../../../sidebar/element.ts';

/** Says something about the work as a whole. */
export function say(text: string, isFailure = false): void {
  const status = byId('status');
  status.textContent = text;
  status.classList.toggle('failed', isFailure);
}
