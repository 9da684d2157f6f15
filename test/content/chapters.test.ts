import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { calculator, evaluate, example } from '#core/registry.ts';
import { chapter as schema, handbook, term as termSchema } from '#src/schemas.ts';
import { allFacts, sourceHomes } from '../shared/files.ts';
import { documents, readBody, shownFigure, strings, type Tag } from './words.ts';

const chapters = documents('chapters', '.mdx');
const terms = documents('terms', '.md');
const facts = allFacts();
const sources = sourceHomes();

const plain = (tag: Tag, name: string): string => {
  const value = tag.attributes[name];
  if (typeof value !== 'string') throw new Error(`<${tag.name}> has no plain ${name}`);
  return value;
};
const expression = (tag: Tag, name: string): Record<string, unknown> => {
  const value = tag.attributes[name];
  if (value === undefined) return {};
  if (typeof value === 'string') throw new Error(`<${tag.name} ${name}> is text, not an expression`);
  return new Function(`return (${value.expression})`)() as Record<string, unknown>;
};

const { parts } = handbook.parse(JSON.parse(readFileSync('content/handbook.json', 'utf8')));
/** Chapters on cutting and pruning show at least two drawings. */
const cutting = parts.filter((p) => ['cutting', 'pruning'].includes(p.id)).flatMap((p) => p.chapters);

describe('The handbook', () => {
  it('lists every chapter once, and none that is not there', () =>
    expect(parts.flatMap((p) => p.chapters).sort()).toEqual(chapters.map((c) => c.slug).sort()));

  it('lists every calculator once, and none that is not there', () =>
    expect(parts.flatMap((p) => p.calculators).sort()).toEqual(readdirSync('content/calculators').map((file) => file.replace(/\.mdx$/, '')).sort()));

  it('has chapters on cutting and pruning', () => expect(cutting.length).toBeGreaterThanOrEqual(2));
});

describe.each(chapters.map((c) => [c.slug, c] as const))('The chapter %s', (_, doc) => {
  const { text, tags } = readBody(doc.body);
  const named = (name: string): Tag[] => tags.filter((t) => t.name === name);

  it('has the frontmatter of a chapter', () => expect(schema.safeParse(doc.front).error).toBeUndefined());

  it('is 600 to 1,200 words long', () => {
    const words = text.split(shownFigure).join(' figure ').match(/[\p{L}’'-]+/gu)?.length ?? 0;
    expect(words).toBeGreaterThanOrEqual(600);
    expect(words).toBeLessThanOrEqual(1200);
  });

  it('uses headings of the second and third level only, and no heading twice', () => {
    const headings = doc.body.match(/^#+ .*$/gm) ?? [];
    expect(headings.filter((h) => !/^###? \S/.test(h))).toEqual([]);
    expect(new Set(headings).size).toBe(headings.length);
  });

  it('shows a drawing, each with a caption', () => {
    expect(named('Figure').length).toBeGreaterThanOrEqual(cutting.includes(doc.slug) ? 2 : 1);
    named('Figure').forEach((f) => expect(plain(f, 'caption').length).toBeGreaterThan(20));
  });

  it('keeps each paragraph on one line: a line break between components eats the space', () => {
    const lines = doc.body.split('\n');
    const broken = lines.filter((line, i) => {
      const before = lines[i - 1] ?? '';
      return /\S/.test(line) && /\S/.test(before) && !/^(- |\d+\. |\||<\/?[A-Z]|#)/.test(line) && !/^<\/?[A-Z]\w*[^>]*>$|^#/.test(before);
    });
    expect(broken).toEqual([]);
  });

  it('shows facts that exist, worded shares as shares and the rest as quantities', () => {
    named('Quantity').forEach((t) => expect([t.attributes.id, facts.get(plain(t, 'id'))?.unit]).not.toContain(undefined));
    named('Quantity').forEach((t) => expect([plain(t, 'id'), facts.get(plain(t, 'id'))?.unit]).not.toContain('share'));
    named('Share').forEach((t) => expect([plain(t, 'id'), facts.get(plain(t, 'id'))?.unit]).toContain('share'));
    const asked = strings(doc.front).flatMap(([, s]) => [...s.matchAll(/\{([^{}]+)\}/g)].map((m) => m[1] as string));
    expect(asked.filter((id) => !facts.has(id))).toEqual([]);
  });

  it('cites sources that exist, and lists all it cites', () => {
    const listed = schema.parse(doc.front).sources;
    const cited = named('Source').map((t) => plain(t, 'id'));
    expect([...cited, ...listed].filter((id) => !sources.has(id))).toEqual([]);
    expect(cited.filter((id) => !listed.includes(id))).toEqual([]);
    const shown = [...named('Quantity'), ...named('Share')].map((t) => facts.get(plain(t, 'id'))?.source).filter((s) => s !== undefined);
    expect(listed.filter((id) => !cited.includes(id) && !shown.includes(id))).toEqual([]);
  });

  it('explains a term once, at its first use, and sends to chapters that exist', () => {
    const used = named('Term').map((t) => plain(t, 'id'));
    expect(used.filter((id) => !terms.some((t) => t.slug === id))).toEqual([]);
    expect(used.filter((id, i) => used.indexOf(id) !== i)).toEqual([]);
    named('ChapterLink').forEach((t) => expect(chapters.map((c) => c.slug)).toContain(plain(t, 'slug')));
  });

  it('links a term where its words first stand, headings, captions and other links apart', () => {
    const blank = (m: string): string => ' '.repeat(m.length);
    const plainText = doc.body.replace(/<(\w*Link|Term)\b[^>]*>.*?<\/\1>|^#+ .*$/gm, blank).replace(/<[^>]*>/g, blank);
    const late = [...doc.body.matchAll(/<Term id="[^"]+">([^<]+)<\/Term>/g)].filter(({ 1: words = '', index }) =>
      new RegExp(`(?<![\\p{L}-])${words}(?![\\p{L}-])`, 'iu').test(plainText.slice(0, index)));
    expect(late.map((m) => m[0])).toEqual([]);
  });

  it('works its results out from whole, valid inputs', () => {
    for (const tag of named('Result')) {
      const id = plain(tag, 'calculator');
      const inputs = { ...example(id), ...expression(tag, 'inputs') };
      expect(Object.keys(inputs).filter((name) => !(name in example(id)))).toEqual([]);
      const outcome = evaluate(id, inputs as never, plain(tag, 'got') as never);
      if (outcome.kind !== 'answer') throw new Error(`${id}: ${JSON.stringify(outcome)}`);
      expect(outcome.outputs[plain(tag, 'output')], `${id} ${plain(tag, 'output')}`).toBeTruthy();
    }
  });

  it('leads to calculators that exist, with inputs they know', () => {
    schema.parse(doc.front).calculators.forEach((id) => expect(calculator(id), id).toBeDefined());
    for (const tag of named('CalculatorLink')) {
      const inputs = { ...example(plain(tag, 'id')), ...expression(tag, 'inputs') };
      expect(Object.keys(inputs).filter((name) => !(name in example(plain(tag, 'id'))))).toEqual([]);
      expect(evaluate(plain(tag, 'id'), inputs as never, 'measured').kind).not.toBe('problems');
    }
  });

  it('warns of wires before anything else it asks the reader to do', () =>
    expect(doc.body.indexOf('<Stop>')).toBeGreaterThan(0));
});

describe('The terms', () => {
  it.each(terms.map((t) => [t.slug, t] as const))('%s says what it means in one or two sentences', (_, doc) => {
    expect(termSchema.safeParse(doc.front).error).toBeUndefined();
    const meaning = doc.body.replace(/\{[^{}]*\}/g, shownFigure).trim();
    expect(meaning).not.toContain('\n');
    const sentences = meaning.split(/(?<=[.!?])\s+/).length;
    expect(sentences).toBeGreaterThanOrEqual(1);
    expect(sentences).toBeLessThanOrEqual(2);
    expect([...doc.body.matchAll(/\{([^{}]+)\}/g)].map((m) => m[1] as string).filter((id) => !facts.has(id))).toEqual([]);
  });

  it('are at least 150, and no name leads to two of them', () => {
    expect(terms.length).toBeGreaterThanOrEqual(150);
    const names = terms.flatMap(({ front }) => {
      const { term, also } = termSchema.parse(front);
      return [term, ...also.map((a) => a.name)].map((n) => n.toLowerCase());
    });
    expect(names.filter((n, i) => names.indexOf(n) !== i)).toEqual([]);
  });

  it('send to terms that exist, and each is used by a chapter or another term', () => {
    const seen = terms.flatMap((t) => termSchema.parse(t.front).see.map((id) => [t.slug, id] as const));
    expect(seen.filter(([from, to]) => from === to || !terms.some((t) => t.slug === to))).toEqual([]);
    const used = new Set([
      ...[...chapters, ...documents('calculators', '.mdx')].flatMap((c) => readBody(c.body).tags.filter((t) => t.name === 'Term').map((t) => plain(t, 'id'))),
      ...seen.map(([, to]) => to),
    ]);
    expect(terms.map((t) => t.slug).filter((slug) => !used.has(slug))).toEqual([]);
  });
});
