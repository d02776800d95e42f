/** What goes on, for somebody who watches; nothing of it is left behind, nothing is said into a pipe. */
export function sayProgress(text: string): void {
  if (process.stderr.isTTY) process.stderr.write(`\r\u001b[K${text}`);
}
