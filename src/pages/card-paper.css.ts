/** The sizes of the pocket card's pages on paper, as styles. */
import { cardPaper } from '#components/card-paper.ts';

export const GET = () => new Response(cardPaper, { headers: { 'content-type': 'text/css' } });
