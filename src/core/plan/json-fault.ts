/**
 * Where a text stops being JSON (RFC 8259), so that a reader can find the place. Engines word this each in their own way,
 * and not all of them say where. Takes the same texts as `JSON.parse`; never recurses, however deep the text is nested.
 */
export type Fault = {
  /** From 1. */
  readonly line: number;
  /** From 1, in UTF-16 units. */
  readonly column: number;
  /** The text ends before it is whole: a file that was cut. */
  readonly cut: boolean;
};

const blank = /[ \t\n\r]*/y;
const token = /([{}[\],:])|("[^"\\\0-\x1f]*(?:\\(?:["\\/bfnrt]|u[\da-fA-F]{4})[^"\\\0-\x1f]*)*")|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;

/** What may come next. */
type Next = 'value' | 'valueOrEnd' | 'key' | 'keyOrEnd' | 'colon' | 'more' | 'nothing';

/** What may come after `mark`, a sign of structure; null where it may not stand. `open`: the brackets not closed yet. */
const afterMark = (mark: string, next: Next, open: string[]): Next | null => {
  const takesValue = next === 'value' || next === 'valueOrEnd';
  if (mark === ':') return next === 'colon' ? 'value' : null;
  if (mark === ',') return next !== 'more' ? null : open.at(-1) === '{' ? 'key' : 'value';
  if (mark === '{' || mark === '[') {
    if (!takesValue) return null;
    open.push(mark);
    return mark === '{' ? 'keyOrEnd' : 'valueOrEnd';
  }
  const mayClose = next === 'more' || next === (mark === '}' ? 'keyOrEnd' : 'valueOrEnd');
  if (!mayClose || open.pop() !== (mark === '}' ? '{' : '[')) return null;
  return open.length > 0 ? 'more' : 'nothing';
};

/** The first place where `text` is no JSON; null where it is JSON from end to end. */
export const jsonFault = (text: string): Fault | null => {
  const open: string[] = [];
  let next: Next | null = 'value';
  let at = 0;
  for (;;) {
    blank.lastIndex = at;
    blank.exec(text);
    at = blank.lastIndex;
    if (at === text.length && next === 'nothing') return null;
    token.lastIndex = at;
    const found = token.exec(text);
    if (!found) break;
    const [whole, mark, string] = found as unknown as [string, string | undefined, string | undefined];
    if (mark !== undefined) next = afterMark(mark, next, open);
    else if (string !== undefined && (next === 'key' || next === 'keyOrEnd')) next = 'colon';
    else next = next !== 'value' && next !== 'valueOrEnd' ? null : open.length > 0 ? 'more' : 'nothing';
    if (next === null) break;
    at += whole.length;
  }
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: (before.at(-1) as string).length + 1, cut: /^("[^"]*)?$/.test(text.slice(at)) };
};
