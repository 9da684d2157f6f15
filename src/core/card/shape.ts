/** Sizes of cards and papers, mm, and what a card keeps free. */
import type { CardInputs } from './fields.ts';
import type { Sizes } from './place.ts';

/** ISO 216 (A6, A7), ISO/IEC 7810 (ID-1), and an index card of three by five inches. */
export const cardSizes = {
  a6: [105, 148],
  a7: [74, 105],
  id1: [85.6, 53.98],
  index: [76.2, 127],
} as const satisfies { readonly [S in CardInputs['size']]: readonly [number, number] };
/** ISO 216 and the North American letter, upright. */
export const paperSizes = { a4: [210, 297], letter: [215.9, 279.4] } as const;

/** Every page that can be printed, by its name: a card alone or folded open, a paper upright or on its side. */
export const pageSizes: Readonly<Record<string, readonly [number, number]>> = Object.fromEntries([
  ...Object.entries(cardSizes).flatMap(([name, [width, height]]) => [[name, [width, height]], [`${name}-fold`, [2 * width, height]]]),
  ...Object.entries(paperSizes).flatMap(([name, [width, height]]) => [[name, [width, height]], [`${name}-wide`, [height, width]]]),
]);
/** The name of its page in `pageSizes`. */
export const pageName = ({ size, sides, paper }: Pick<CardInputs, 'size' | 'sides' | 'paper'>, page: { width: number; height: number }): string =>
  paper === 'card' ? `${size}${sides === 'fold' ? '-fold' : ''}` : `${paper}${page.width > page.height ? '-wide' : ''}`;

export type CardShape = Pick<CardInputs, 'size' | 'sides' | 'type' | 'hole'>;
/** Most blocks on a card of bank card size. */
export const mostOnId1 = 2;
export const columnsOf = (size: CardInputs['size']): number => (size === 'a6' ? 2 : 1);
export const marginOf = (size: CardInputs['size']): number => (size === 'id1' ? 3 : 4);
/** A hole of five millimetres, with room to punch it by hand, in the middle at the top. */
export const hole = { radius: 2.5, centre: 5.5, strip: 9.5 };

/** Points: words, figures, and the small type of marks and the foot. Nothing is ever smaller than `least`. */
export const least = 7.5;
export const typeSizes = {
  plain: { word: 9, figure: 11, mark: least, foot: least },
  small: { word: least, figure: 9, mark: least, foot: least },
} as const satisfies { readonly [T in CardInputs['type']]: Sizes };
