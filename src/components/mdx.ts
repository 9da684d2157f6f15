/** Every component an author may use in a chapter without importing it. */
import Caution from './Caution.astro';
import ChapterLink from './ChapterLink.astro';
import Given from './Given.astro';
import Quantity from './Quantity.astro';
import Result from './Result.astro';
import Share from './Share.astro';
import Source from './Source.astro';
import Stop from './Stop.astro';
import Term from './Term.astro';

export const components = { Caution, ChapterLink, Given, Quantity, Result, Share, Source, Stop, Term };
