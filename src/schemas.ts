/**
 * The shapes of everything that is written by hand as data: facts in `shared/`, words in `content/`.
 * The content collections use them at build; the tests use them on every file. All are closed: an unknown key fails.
 */
import { z } from 'astro/zod';

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'lower case words joined by hyphens');
const name = z.string().regex(/^[a-z][A-Za-z0-9]*$/, 'a camelCase name');
const text = z.string().min(1);

/** How a fact is known: see "How facts are known" in DEVELOPERS.md. */
export const status = z.enum(['published', 'second-hand', 'derived', 'practice', 'memory']);
export type Status = z.infer<typeof status>;

/** One entry of `shared/sources/<kind>.json` (id -> record). */
export const source = z.strictObject({
  title: text,
  publisher: text,
  edition: text.optional(),
  /** Where it can be found; no address where only a printed or stored copy is known. */
  address: z.url().optional(),
  /** What was seen of it, in our own words: "Table 1 and abstract". */
  seen: text,
});
export const sources = z.record(id, source);

/** One entry of `shared/values/<topic>.json`; its full id is `<topic>.<key>`. */
export const fact = z
  .strictObject({
    value: z.union([z.number(), z.tuple([z.number(), z.number()])]),
    /** A unit of core/kit/units.ts; `share` for a part of one that is said in words ("a third"). */
    unit: text,
    /** What the number is, one line, no figures in it. */
    says: text,
    status,
    source: id.optional(),
    locator: text.optional(),
    /** The figure as the source prints it, where that is in other units. */
    as: z.strictObject({ value: z.union([z.number(), z.tuple([z.number(), z.number()])]), unit: text }).optional(),
    /** Converted from `as`: it is shown rounded to its unit's step on the side that protects. */
    protects: z.enum(['up', 'down']).optional(),
    note: text.optional(),
  })
  .refine((f) => f.protects === undefined || f.as !== undefined, { message: 'only a converted value says to which side it is rounded' })
  .refine((f) => (f.status === 'practice' || f.status === 'memory') === (f.source === undefined), {
    message: 'a published, second-hand or derived value names its source; practice and memory have none',
  });
export type Fact = z.infer<typeof fact>;
export const facts = z.record(id, fact);

/** `shared/tables/<id>.json`: rows of figures that belong together, with what each column is and how to read between rows. */
export const table = z.strictObject({
  title: text,
  says: text,
  columns: z.record(name, z.strictObject({ unit: text, says: text })),
  /** How to read between the rows, or what stands in for a row that is not there. */
  between: text,
  sources: z.array(id).min(1),
  notes: z.array(text).default([]),
  rows: z.array(z.record(name, z.union([text, z.number()]))).min(1),
});

/** `shared/checks/<calculator>.json`: worked examples from outside, run by the tests and shown on the page. */
export const checks = z.strictObject({
  calculator: id,
  rows: z.array(
    z.strictObject({
      title: text,
      given: z.record(name, z.union([z.number(), z.string(), z.array(z.number()), z.null()])),
      expect: z.record(name, z.union([z.number(), z.string()])),
      tolerance: z.number().nonnegative(),
      /** Why that tolerance. */
      why: text,
      status,
      source: id.optional(),
      locator: text.optional(),
      note: text.optional(),
    }),
  ),
});

/** Words of one calculator: frontmatter of `content/calculators/<id>.mdx`. */
export const calculatorWords = z.strictObject({
  title: text,
  question: text,
  /** One line: when not to use it. */
  notFor: text,
  /** `got`: how such a figure is come by, where "by eye" and "measured" do not say it. */
  inputs: z.record(name, z.strictObject({
    label: text, hint: text.optional(), choices: z.record(name, text).optional(), got: z.strictObject({ judged: text, measured: text }).optional(),
  })),
  /** `none`: what is said where there is no such figure. */
  outputs: z.record(name, z.strictObject({ label: text, none: text.optional(), choices: z.record(name, text).optional() })),
  /** Intermediate figures of the working. */
  middle: z.record(name, text).default({}),
  findings: z.record(name, text),
  outside: z.record(name, text).default({}),
  problems: z.record(name, text).default({}),
  /** A step: what is worked out, the formula in words, the same with `{name}` for the figures. */
  working: z.record(name, z.strictObject({ title: text, formula: text, numbers: text })),
  /** What the drawing shows, for those who cannot see it; `{name}` for figures. */
  drawing: text,
  /** Calculators that its results carry on to, with what fills what: `{ to: { theirInput: ourOutput } }`, or a sum, `ourOutput+ourInput`. */
  carries: z.record(id, z.record(name, z.string().regex(/^[a-z][A-Za-z0-9]*(\+[a-z][A-Za-z0-9]*)*$/, 'names joined by +'))).default({}),
  sources: z.array(id).default([]),
  also: z.array(text).default([]),
});
export type CalculatorWords = z.infer<typeof calculatorWords>;

/** Frontmatter of `content/chapters/<slug>.mdx`. */
export const chapter = z.strictObject({
  title: text,
  /** One line for lists and search results. */
  summary: text,
  /** What to take away: three lines at most. */
  takeAway: z.array(text).min(1).max(3),
  check: z.array(z.strictObject({ question: text, answer: text })).min(3).max(5),
  calculators: z.array(id),
  sources: z.array(id),
  also: z.array(text).default([]),
});

/** Frontmatter of `content/terms/<slug>.md`; the body is the meaning, one or two sentences. */
export const term = z.strictObject({
  term: text,
  also: z.array(z.strictObject({ name: text, where: text.optional() })).default([]),
  see: z.array(id).default([]),
});

/** `content/tables/<id>.json`: the words of a page of ready-reckoners; its figures are worked out by core. */
export const tablePage = z.strictObject({
  title: text,
  /** One line for lists and search results. */
  summary: text,
  calculator: id.optional(),
  also: z.array(text).default([]),
  /** `head`: words over the columns, empty where the figure heads it; `nameless`: what a list calls its entry without a name. */
  tables: z.record(name, z.strictObject({ title: text, says: text, head: z.array(z.string()).optional(), nameless: text.optional() })),
  /** What stands under the tables: facts as `{topic.key}`. */
  notes: z.array(text).default([]),
  sources: z.array(id).default([]),
});

/** `content/routes.json`: short reads by what is ahead, and the words of their page. */
export const routes = z.strictObject({
  title: text, description: text, also: z.array(text), say: text, ahead: text, read: text, readChosen: text,
  chosen: text, none: text, minutes: text,
  routes: z.array(z.strictObject({ id, title: text, chapters: z.array(id).min(1) })).min(1),
});

/** `content/handbook.json`: the parts, and in each the order of its calculators and chapters. */
export const handbook = z.strictObject({
  parts: z.array(z.strictObject({ id, title: text, calculators: z.array(id).default([]), chapters: z.array(id) })),
});

const bandTable = z.strictObject({
  basis: z.enum(['between-phases', 'to-ground']),
  over: z.number().positive().optional(),
  includingOver: z.boolean().optional(),
  bands: z.array(z.strictObject({
    upTo: z.number().positive().nullable(),
    including: z.boolean().optional(),
    distance: z.number().positive(),
    status: z.enum(['published', 'second-hand', 'memory']),
    as: z.strictObject({ value: z.number(), unit: text }).optional(),
    printed: text.optional(),
    steps: z.strictObject({ from: z.number(), every: z.number().positive(), add: z.number().positive() }).optional(),
    spotter: z.number().positive().optional(),
    source: id.optional(),
    locator: text.optional(),
    note: text.optional(),
  })).min(1),
});

/** `shared/tables/rules/<id>.json`: distances to lines for people who are not authorised (kV, m); see core/facts/rule-sets.ts. */
export const ruleSet = z.strictObject({
  title: text,
  place: text,
  rule: text,
  weight: z.enum(['law', 'code', 'standard', 'guidance', 'operator']),
  edition: text,
  whom: text,
  /** None only where the figures are from memory. */
  source: id.optional(),
  locator: text.optional(),
  counts: z.array(z.enum(['body', 'clothing', 'tool', 'heldConductor', 'branch', 'platform'])).min(1),
  above: z.enum(['inside', 'not-said']),
  movement: z.enum(['on-top', 'included', 'not-said']),
  edges: z.enum(['as-printed', 'filled']),
  persons: bandTable,
  plant: bandTable.optional(),
  unknown: z.number().positive().optional(),
  ask: text,
  notes: z.array(text),
});
