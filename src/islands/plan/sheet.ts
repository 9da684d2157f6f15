/** What stands on the sheet, in words and figures, for print and for PDF alike. */
import { calculator as frame, levels } from '#content/interface.json';
import { ruleChanged } from '#core/plan/edition.ts';
import type { Plan } from '#core/plan/facts.ts';
import { findingsOf, type PlanFinding } from '#core/plan/findings.ts';
import { gates } from '#core/plan/names.ts';
import type { PlanWork } from '#core/plan/work.ts';
import { beyondGuess } from '#core/kit/outcome.ts';
import type { Level } from '#core/kit/calculator.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { plain } from '../kit/Say.tsx';
import { limbGapRows, limbRows, pieceRows, type Shown } from './figures.ts';
import { clockText, fillIn, ownText, type PlanProps, speakerOf } from './words.ts';

/** One figure across the pieces of the plan; null where a piece has none. */
export type SheetRow = { readonly label: string; readonly cells: readonly (Shown | null)[] };
/** So many pieces side by side as a sheet is wide. */
export type SheetTable = { readonly heads: readonly string[]; readonly rows: readonly SheetRow[] };
export type SheetLine = { readonly label: string; readonly text: string };
/** `first`: said before anything that is worked out; then `stops` and `cautions`. `below`: how the table is to be read. */
export type SheetText = {
  readonly limbs: readonly string[]; readonly tables: readonly SheetTable[]; readonly lines: readonly SheetLine[];
  readonly first: readonly string[]; readonly stops: readonly Shown[]; readonly cautions: readonly Shown[]; readonly below: string;
};

const both = (text: (system: UnitSystem) => string): Shown => ({ metric: text('metric'), imperial: text('imperial') });

/** So many pieces side by side; more of them where they would take more than two tables beside that of the first side. */
const [roomy, widest, tables] = [4, 6, 3];

/** The pieces in the order they are cut, so many to a table, a row for each figure. */
const tablesOf = (props: PlanProps, { limbs }: PlanWork): SheetTable[] => {
  const columns = limbs.flatMap((one, i) => one.pieces.map((piece, at) => ({
    head: one.pieces.length === 1 ? String(i + 1) : `${i + 1}${String.fromCharCode(97 + at)}`,
    rows: (one.fits ? [...pieceRows(props, piece), ...limbRows(props, one)] : [...limbRows(props, one), ...limbGapRows(props, piece)]).filter(({ label }) => label !== props.words.answer.total),
  })));
  const most = Math.min(widest, Math.max(roomy, Math.ceil(columns.length / tables)));
  // As even as they go: no table of one piece alone.
  const wide = Math.ceil(columns.length / Math.ceil(columns.length / most));
  const labels = [...new Set(columns.flatMap(({ rows }) => rows.map(({ label }) => label)))];
  return Array.from({ length: Math.ceil(columns.length / wide) }, (_, n) => {
    const some = columns.slice(n * wide, (n + 1) * wide);
    return {
      heads: some.map(({ head }) => head),
      rows: labels.map((label) => ({ label, cells: some.map(({ rows }) => rows.find((row) => row.label === label)?.text ?? null) })).filter(({ cells }) => cells.some((cell) => cell !== null)),
    };
  });
};

/** Said on the sheet by a line of its own, or by a row of its table. */
const saidElsewhere = ['gateNo', 'gateOpen', 'ruleChanged', 'throwsBack'];

/** What comes too near is said once a limb: by the nearest of all, where that is a stop, not also by each part of it. */
const partsOfNear = ['heldNear', 'limbNear', 'notIfYouStumble'];
const forPaper = (findings: readonly PlanFinding[]): PlanFinding[] => findings.filter(({ id, limb }) =>
  !saidElsewhere.includes(id) && !(partsOfNear.includes(id) && findings.some((other) => other.id === 'tooNear' && other.limb === limb)));

/** A finding as it stands on paper, plain, its level in words: paper has no colour. */
const onPaper = (props: PlanProps, { level, part, id, limb, values }: PlanFinding): Shown => both((system) => {
  const who = limb === null ? `${levels[level]}. ` : `${levels[level]}, ${fillIn(props.words.traffic.limb, { number: limb + 1 })}: `;
  if (part === 'plan') return who + ownText(props, { id, values }, system);
  const speaker = speakerOf(props, part);
  const { limit, problem: _, ...figures } = values;
  if (id === 'cannotWork') return who + fillIn(props.words.said.cannotWork, { problem: props.parts[part].title });
  if (id === beyondGuess) return who + plain(speaker, frame.beyondGuess, figures, system);
  return who + plain(speaker, id === 'outside' ? (speaker.words.outside[limit as string] ?? props.words.said.outside) : (speaker.words.findings[id] ?? id), figures, system);
});

type Kept = { readonly where: string; readonly gate: string; readonly road: string; readonly position: string; readonly emergency: string; readonly operator: string };

export const sheetOf = (props: PlanProps, plan: Plan, work: PlanWork, kept: Kept): SheetText => {
  const { sheet, answer } = props.words;
  const { address, position, date, watcher, signals, crew, notes, tree, saw } = plan.site;
  const said = forPaper(findingsOf(plan, work));
  const ofLevel = (level: Level): Shown[] => said.filter((finding) => finding.level === level).map((finding) => onPaper(props, finding));
  const place = [address || kept.where, kept.gate, position || kept.position].filter(Boolean).join(', ');
  return {
    first: [
      ...(gates.some((name) => plan.gate[name] !== 'yes') ? [sheet.unanswered] : []),
      ...(work.distance && ruleChanged(plan) ? [props.words.said.ruleChanged] : []),
    ],
    stops: ofLevel('stop'),
    cautions: ofLevel('caution'),
    lines: [
      { label: sheet.emergency, text: kept.emergency },
      { label: sheet.address, text: place },
      { label: sheet.operator, text: kept.operator },
      { label: sheet.watch, text: watcher },
      { label: sheet.signals, text: signals },
      { label: sheet.date, text: date },
      { label: props.words.site.tree, text: tree },
      ...(saw ? [{ label: props.words.site.saw, text: saw }] : []),
      ...(crew ? [{ label: sheet.crew, text: crew }] : []),
      ...(notes ? [{ label: sheet.notes, text: notes }] : []),
    ],
    limbs: work.limbs.map((one) => [
      one.limb.name,
      ...(one.fits ? [fillIn(answer.turn, { clock: clockText(props, one.limb.bearings.worker) })] : []),
      ...(one.pieces.some(({ ways }) => ways) ? [`${sheet.ways}: ${clockText(props, one.limb.bearings.wayOut)}, ${clockText(props, one.limb.bearings.wayOut2)}`] : []),
      ...(one.fits ? [] : [answer.nowhere]),
    ].join('. ')),
    tables: tablesOf(props, work),
    below: [answer.level, ...(work.limbs.some(({ pieces }) => pieces.length > 1) ? [answer.tip] : [])].join(' '),
  };
};
