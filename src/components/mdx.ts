/** Every component an author may use in a text without importing it. */
import CalculatorLink from './CalculatorLink.astro';
import Caution from './Caution.astro';
import ChapterLink from './ChapterLink.astro';
import Figure from './Figure.astro';
import Given from './Given.astro';
import Quantity from './Quantity.astro';
import Result from './Result.astro';
import Share from './Share.astro';
import Source from './SourceMark.astro';
import Stop from './Stop.astro';
import TableLink from './TableLink.astro';
import Term from './Term.astro';

export const components = { CalculatorLink, Caution, ChapterLink, Figure, Given, Quantity, Result, Share, Source, Stop, TableLink, Term };
