import { CommanderError, InvalidArgumentError } from 'commander';
import { sayProgress } from './progress.ts';

/** Runs a command to its end: 0 when done, 1 when it failed, 2 when it was not understood; the reason goes to the error output. */
export async function endingOf(command: () => Promise<unknown>): Promise<void> {
  // Whoever reads may have seen enough: `npm start | head`.
  process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => process.exit(code === 'EPIPE' ? 0 : 1));
  try {
    await command();
  } catch (error) {
    sayProgress('');
    const isUsage = error instanceof CommanderError;
    const isSaid = isUsage && !(error instanceof InvalidArgumentError); // by the parser itself
    if (!isSaid) console.error((error as Error).message);
    process.exitCode = isUsage ? (error.exitCode === 0 ? 0 : 2) : 1;
  }
}
