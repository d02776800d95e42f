/** Named as the source of a default that rests on nothing else. */
export const practice = 'common practice, no source';
