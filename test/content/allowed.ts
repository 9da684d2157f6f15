/** Sentences that hold something like a figure and may: each with its reason. A sentence that is gone must leave this list. */
export const allowed: { file: string; sentence: string; reason: string }[] = [
  {
    file: 'content/calculators/reduction.mdx',
    sentence: 'a third of the limb',
    reason: 'The name of a choice; the share it stands for is the fact reduction.least-share, shown with its mark below.',
  },
  {
    file: 'content/calculators/reduction.mdx',
    sentence: 'half, where a specification asks for it',
    reason: 'The name of a choice; the share it stands for is the fact reduction.half-share, shown with its mark below.',
  },
  { file: 'content/interface.json', sentence: '12 inch bar', reason: 'An example of what one may type into search, not advice.' },
  { file: 'content/interface.json', sentence: '33 kV', reason: 'An example of what one may type into search, not advice.' },
  { file: 'content/interface.json', sentence: '1 found', reason: 'A count of results.' },
  {
    file: 'content/chapters/cutting-where-the-tree-can-close-it.mdx',
    sentence: 'cut at about a right angle to the top of the branch',
    reason: 'The rule itself, in the words of its source, which stands behind the sentence.',
  },
  { file: 'content/calculators/crown-share.mdx', sentence: '60, 45 45, or 60 2 x 45', reason: 'How to type a list, not advice.' },
  { file: 'content/cards/card.json', sentence: 'A6', reason: 'The name of a size of paper.' },
  { file: 'content/cards/card.json', sentence: 'A7', reason: 'The name of a size of paper.' },
  { file: 'content/cards/card.json', sentence: 'three months', reason: 'What the reader chooses for their own card.' },
  { file: 'content/cards/card.json', sentence: 'six months', reason: 'What the reader chooses for their own card.' },
  { file: 'content/cards/card.json', sentence: 'This ruler: ten centimetres.', reason: 'What is drawn beside it, held by a test of the sheet.' },
  { file: 'content/cards/card.json', sentence: 'This ruler: four inches.', reason: 'What is drawn beside it, held by a test of the sheet.' },
];
