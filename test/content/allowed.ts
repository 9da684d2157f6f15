/** Sentences that hold something like a figure and may: each with its reason. A sentence that is gone must leave this list. */
export const allowed: { file: string; sentence: string; reason: string }[] = [
  {
    file: 'content/chapters/cutting-where-the-tree-can-close-it.mdx',
    sentence: 'cut at about a right angle to the top of the branch',
    reason: 'The rule itself, in the words of its source, which stands behind the sentence.',
  },
];
