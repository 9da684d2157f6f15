/** Reading time of an MDX text, in whole minutes, at the pace of someone reading to learn. */
const wordsPerMinute = 180;

/** Words a reader reads: markup, component tags and import lines do not count. */
export const countWords = (mdx: string): number =>
  mdx
    .replace(/^(import|export)\s.*$/gm, ' ')
    .replace(/<\/?[A-Za-z][^>]*>/g, ' ')
    .replace(/[#*_`>|[\](){}]/g, ' ')
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

export const minutes = (mdx: string): number => Math.max(1, Math.ceil(countWords(mdx) / wordsPerMinute));
