/** The sheet of styles that gives each page of the pocket card its own size on paper, from the sizes core lays it out by. */
import { pageSizes } from '#core/card/shape.ts';

/** A page that is as high as its paper to the last hair spills onto a second. */
const short = 0.3;
const mm = (length: number): string => `${Number(length.toFixed(2))}mm`;

/**
 * The sheet of every page sets margins of its own, and browsers let the later sheet win, whichever that is: hence the
 * important ones.
 */
const rulesOf = ([name, [width, height]]: readonly [string, readonly [number, number]]): string => `.card-page[data-page='${name}'] {
  page: ${name};
  height: ${mm(height - short)};
}
.card-page[data-page='${name}'] svg {
  width: ${mm(width)};
  height: ${mm(height)};
}
@page ${name} {
  size: ${mm(width)} ${mm(height)};
  margin: 0 !important;
  @bottom-right {
    content: none !important;
  }
}
`;

/** For `media="print"` alone. */
export const cardPaper: string = Object.entries(pageSizes).map(rulesOf).join('');
