import { messageOf } from '../functions/messages.ts';

/**
 * What a person is told of an error: the workbook's own words as they are; to Google's own, which say little, that all of
 * it can be done again. Google's errors are called Exception (from memory), those of the script Error.
 */
export function explained(error: unknown): string {
  const isOwn = error instanceof Error && error.name === 'Error';
  return isOwn
    ? messageOf(error)
    : `It stopped on the way: ${messageOf(error)}. Nothing is lost: do it again.`;
}
