/** Words as search compares them, and how far apart two of them are. */

/** Small words that say nothing about what is looked for. */
const small = new Set('a an and at by can do does for from how i in is it me my of on or so that the this to up what when where which who why with you your'.split(' '));

/** Lower case, no accents, hyphens and dots between letters as spaces; a decimal point or comma stays. */
export const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/(?<!\d)[.,]|[.,](?!\d)/g, ' ')
    .replace(/[^\p{L}\p{N}.,]+/gu, ' ')
    .trim();

export const wordsOf = (text: string): string[] => plain(text).split(' ').filter(Boolean);

/** The words of a question that count; all of them where only small words were typed. */
export const askedWords = (query: string): string[] => {
  const all = wordsOf(query);
  const telling = all.filter((word) => !small.has(word));
  return telling.length > 0 ? telling : all;
};

/**
 * Letters to change, add, drop or swap to make `b` of `a` (optimal string alignment); anything over `most` is told as
 * `most + 1`.
 */
export const distance = (a: string, b: string, most: number): number => {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((last[j] as number) + 1, (row[j - 1] as number) + 1, (last[j - 1] as number) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, (before[j - 2] as number) + 1);
      row.push(least);
    }
    [before, last] = [last, row];
  }
  return Math.min(last[b.length] as number, most + 1);
};

/** Typing errors forgiven in a word: none in short ones, where another word is as near; none in figures. */
const forgiven = (word: string): number => (/\d/.test(word) || word.length < 4 ? 0 : word.length < 8 ? 1 : 2);

/** How well a word of the handbook answers a word asked for: 1 the same, less for a beginning or a typing error, 0 not. */
export const likeness = (asked: string, word: string): number => {
  if (asked === word) return 1;
  if (word.startsWith(asked) && !/\d/.test(asked)) return asked.length < 2 ? 0.3 : 0.5 + 0.4 * (asked.length / word.length);
  const most = forgiven(asked);
  if (most === 0 || asked[0] !== word[0]) return 0;
  const whole = distance(asked, word, most);
  if (whole <= most) return 0.6 - 0.15 * whole;
  // Still typing: the beginning of a longer word, misspelt.
  const begun = word.length > asked.length ? distance(asked, word.slice(0, asked.length), most) : most + 1;
  return begun <= most ? 0.4 - 0.1 * begun : 0;
};
