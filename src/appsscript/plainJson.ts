/** JSON in ASCII without markup: nothing cuts it inside a character, and no page takes part of it for an element. */
export const plainJson = (data: unknown) =>
  JSON.stringify(data).replace(
    /[<>&\u007f-\uffff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
