import type { Engine } from './engine.ts';

/** What Google calls the format of a cell that has none. From memory. */
export const generalFormat = 'General';

/** A positive and a negative number, zero and text: each picks its own section of a format. */
const samples = [1234.567, -1234.567, 0, 'text'];

/**
 * The engine's format for one of Google's.
 * @throws Error when the engine can't show it ([Red], E+00, fractions, h:mm …): it would show #ERROR in its place
 */
export function engineFormat(engine: Engine, format: string): string {
  if (format === generalFormat) return '';
  try {
    for (const sample of samples)
      engine.helpers.formatValue(sample, { format, locale: engine.DEFAULT_LOCALE });
  } catch (error) {
    throw new Error(
      `number format '${format}' can't be shown by the local host: ${(error as Error).message}`,
    );
  }
  return format;
}
