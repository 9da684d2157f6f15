/** The shape of the house: its top, its names, its sizes, and what core leaves out. */
import { existsSync, readdirSync } from 'node:fs';
import { basename } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import type { AnyCalculator } from '#core/kit/calculator.ts';
import { units } from '#core/kit/units.ts';
import { calculators } from '#core/registry.ts';
import { filesOf, syntaxOf, textOf } from './sources.ts';

const written = filesOf(['src', 'test', 'content', 'public'], ['.ts', '.tsx', '.mjs', '.astro', '.mdx', '.md', '.css', '.json', '.svg', '.webmanifest'])
  .concat(['README.md', 'DEVELOPERS.md', 'package.json', 'tsconfig.json', 'astro.config.mjs']);

describe('the top', () => {
  it('holds what it should and nothing else, but dot-files, the lock and what is made', () => {
    const made = ['node_modules', 'dist', 'package-lock.json'];
    expect(readdirSync('.').filter((name) => !name.startsWith('.') && !made.includes(name)).sort()).toEqual(
      ['DEVELOPERS.md', 'README.md', 'astro.config.mjs', 'content', 'package.json', 'public', 'shared', 'src', 'test', 'tsconfig.json'],
    );
  });
  it('shared is JSON only', () => {
    expect(filesOf(['shared'], ['']).filter((f) => !f.endsWith('.json'))).toEqual([]);
  });
});

describe('files are short', () => {
  /** Longer, with its reason. */
  const longer: { [file: string]: string } = {
  };
  const most = 250;
  const code = written.filter((f) => /\.(ts|tsx|mjs|astro|mdx|md|css)$/.test(f));
  const lines = (file: string): number => textOf(file).split('\n').length - 1;

  it(`none over ${most} lines`, () => {
    expect(code.filter((f) => lines(f) > most && !(f in longer)).map((f) => `${f}: ${lines(f)}`)).toEqual([]);
  });
  it('the list of longer ones names only longer ones', () => {
    expect(Object.keys(longer).filter((f) => !existsSync(f) || lines(f) <= most)).toEqual([]);
  });
});

describe('nothing is left for later', () => {
  const mark = new RegExp(`\\b(${['TO', 'DO'].join('')}|${['FIX', 'ME'].join('')}|${['X', 'XX'].join('')}|${['HA', 'CK'].join('')})\\b`);
  it('no mark of unfinished work', () => {
    expect(written.filter((f) => mark.test(textOf(f)))).toEqual([]);
  });
  it('no test is skipped or alone', () => {
    const tests = filesOf(['test'], ['.test.ts', '.test.tsx']);
    expect(tests.filter((f) => /\b(it|test|describe)\.(skip|only|todo)\b/.test(textOf(f)))).toEqual([]);
  });
});

describe('core', () => {
  const core = filesOf(['src/core'], ['.ts']);
  const nodesOf = (file: string): ts.Node[] => {
    const all: ts.Node[] = [];
    const visit = (node: ts.Node): void => {
      all.push(node);
      ts.forEachChild(node, visit);
    };
    visit(syntaxOf(file));
    return all;
  };

  it('has no chance and no clock: the same inputs give the same outcome', () => {
    const names = core.flatMap((f) => nodesOf(f).filter(ts.isIdentifier).map((n) => [f, n.text] as const));
    expect(names.filter(([, name]) => ['random', 'Date', 'performance', 'setTimeout', 'crypto'].includes(name)).map(([f, name]) => `${f}: ${name}`)).toEqual([]);
  });

  it('has no enums and no namespaces', () => {
    expect(core.filter((f) => nodesOf(f).some((n) => ts.isEnumDeclaration(n) || ts.isModuleDeclaration(n)))).toEqual([]);
  });

  it('says no words: no text with a space in it, but symbols of units and complaints to ourselves', () => {
    const symbols = ['src/core/kit/units.ts', 'src/core/kit/read.ts'];
    const inComplaint = (node: ts.Node): boolean => {
      for (let up: ts.Node = node; up.parent; up = up.parent) {
        if (ts.isNewExpression(up) && up.expression.getText() === 'Error') return true;
      }
      return false;
    };
    const words = core.filter((f) => !symbols.includes(f)).flatMap((f) =>
      nodesOf(f).filter((n) => (ts.isStringLiteralLike(n) || ts.isTemplateHead(n) || ts.isTemplateMiddle(n) || ts.isTemplateTail(n)) && /[A-Za-z]+\s+[A-Za-z]+/.test(n.text) && !(n.text in units) && !inComplaint(n))
        .map((n) => `${f}: ${(n as ts.StringLiteralLike).text}`));
    expect(words).toEqual([]);
  });

  it('counts what it asks the coverage to pass over: each with its reason', () => {
    const ignores = core.flatMap((f) => [...textOf(f).matchAll(/(?:v8|c8|istanbul) ignore[^\n]*/g)].map((m) => `${f}: ${m[0]}`));
    expect(ignores.filter((line) => !/ignore (next|start|stop|if|else|file)?.*--.{10,}/.test(line))).toEqual([]);
    expect(ignores.length).toBeLessThanOrEqual(5);
  });
});

describe('one thing, one name', () => {
  const ids = calculators.map((c) => c.id);
  const namesIn = (folder: string, ending: string): string[] => filesOf([folder], [ending]).map((f) => basename(f, ending));

  it.each(calculators)('$id: core, drawing, island, words, examples from outside, test', ({ id }) => {
    const places = [
      `src/core/calculators/${id}.ts`, `src/drawings/${id}/geometry.ts`, `src/drawings/${id}/Drawing.tsx`, `src/islands/${id}/Island.tsx`,
      `content/calculators/${id}.mdx`, `shared/checks/${id}.json`, `test/core/calculators/${id}.test.ts`,
    ];
    expect(places.filter((place) => !existsSync(place))).toEqual([]);
  });

  it('no page and no island of a calculator that is not in the list', () => {
    expect(namesIn('content/calculators', '.mdx').filter((id) => !ids.includes(id))).toEqual([]);
    expect(filesOf(['src/islands'], ['Island.tsx']).map((f) => f.split('/')[2]).filter((id) => !ids.includes(id as string))).toEqual([]);
  });

  it('a calculator’s file is named after it, and examples from outside belong to one there is', async () => {
    for (const name of namesIn('src/core/calculators', '.ts')) {
      const module = (await import(`../../src/core/calculators/${name}.ts`)) as { [key: string]: AnyCalculator };
      expect(Object.values(module).filter((v) => typeof v === 'object' && 'compute' in v).map((c) => c.id)).toEqual([name]);
    }
    expect(namesIn('shared/checks', '.json').filter((id) => !namesIn('src/core/calculators', '.ts').includes(id))).toEqual([]);
  });
});
