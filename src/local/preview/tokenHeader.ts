/** What a write carries beside the cookies and headers that any page can send: the token that only our page was given. */
export const tokenHeader = 'x-preview-token';
