/** What a computation gives, or nothing and the reason why it refuses its data. */
export type Attempt<T> =
  | { readonly value: T; readonly refusal: undefined }
  | { readonly value: undefined; readonly refusal: string };

/** Computes from data that may be impossible; a refusal becomes words for a finding, any other error is thrown on. */
export function attempt<T>(compute: () => T): Attempt<T> {
  try {
    return { value: compute(), refusal: undefined };
  } catch (error) {
    if (error instanceof RangeError) return { value: undefined, refusal: error.message };
    throw error;
  }
}
