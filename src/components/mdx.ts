/** Every component an author may use in a chapter without importing it. */
import Caution from './Caution.astro';
import ChapterLink from './ChapterLink.astro';
import Stop from './Stop.astro';
import Term from './Term.astro';

export const components = { Caution, ChapterLink, Stop, Term };
