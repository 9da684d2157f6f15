/** Reads our own files as text and as syntax: what the house rules are checked on. */
import { existsSync, globSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import ts from 'typescript';

/** Files of the tree under these folders, by their endings, with `/` between folders. */
export const filesOf = (folders: readonly string[], endings: readonly string[]): string[] =>
  folders.flatMap((folder) => globSync(`${folder}/**/*`)).map((f) => f.replaceAll('\\', '/'))
    .filter((f) => endings.some((e) => f.endsWith(e)) && statSync(f).isFile()).sort();

export const textOf = (file: string): string => readFileSync(file, 'utf8');

/** The scripts of a file: itself, the frontmatter and scripts of a page, or the imports an MDX file begins with. */
const scriptsOf = (file: string): string => {
  const text = textOf(file);
  if (file.endsWith('.astro')) {
    const front = /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '';
    return [front, ...[...text.matchAll(/<script(?:\s[^>]*)?>([\s\S]*?)<\/script>/g)].map((m) => m[1])].join('\n');
  }
  return file.endsWith('.mdx') ? text.split('\n').filter((line) => /^(import|export)\s/.test(line)).join('\n') : text;
};

export const syntaxOf = (file: string): ts.SourceFile =>
  ts.createSourceFile(file, scriptsOf(file), ts.ScriptTarget.Latest, true, file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS);

export type Import = { file: string; from: string; typeOnly: boolean };

const typesAlone = (clause: ts.ImportClause | undefined): boolean => {
  if (!clause) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const bindings = clause.namedBindings;
  return !clause.name && !!bindings && ts.isNamedImports(bindings) && bindings.elements.length > 0 && bindings.elements.every((e) => e.isTypeOnly);
};

/** Every import of a file: static, re-exported and dynamic. */
export const importsOf = (file: string): Import[] => {
  const found: Import[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      found.push({ file, from: node.moduleSpecifier.text, typeOnly: typesAlone(node.importClause) });
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier)) {
      found.push({ file, from: node.moduleSpecifier.text, typeOnly: node.isTypeOnly });
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [what] = node.arguments;
      if (what && ts.isStringLiteralLike(what)) found.push({ file, from: what.text, typeOnly: false });
    }
    ts.forEachChild(node, visit);
  };
  visit(syntaxOf(file));
  return found;
};

const aliases: [string, string][] = Object.entries((JSON.parse(readFileSync('package.json', 'utf8')) as { imports: Record<string, string> }).imports)
  .map(([from, to]) => [from.replace('*', ''), to.replace(/^\.\//, '').replace('*', '')]);

/** Where an import leads: a path of our own tree, or the bare name of a package. */
export const targetOf = ({ file, from }: Import): string => {
  const plain = from.replace(/\?.*$/, '');
  if (plain.startsWith('.')) return normalize(join(dirname(file), plain)).replaceAll('\\', '/');
  const alias = aliases.find(([prefix]) => plain.startsWith(prefix));
  if (!alias) return plain;
  return alias[1] + plain.slice(alias[0].length);
};

export const isOwn = (target: string): boolean => existsSync(target);
