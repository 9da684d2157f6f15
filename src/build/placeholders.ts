/** Marks in pages that the build fills in once everything is written: edition.ts and offline.ts. */
export const EDITION_PLACEHOLDER = '__EDITION__';
/** What the whole edition weighs packed, in words: "0.4 MB". */
export const SIZE_PLACEHOLDER = '__SIZE__';
