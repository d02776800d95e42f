import type { Book } from './places.ts';

/** Says what a long job is at. */
export const progress = (book: Book, step: string) => {
  book.toast(step, 'Laying out');
};
