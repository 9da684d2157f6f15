/** One traffic of findings: what every calculator says about every limb, and what the plan itself says, the worst first. */
import type { AnyInput, Level, Values } from '../kit/calculator.ts';
import { worstFirst } from '../kit/outcome.ts';
import { ruleChanged } from './edition.ts';
import type { Plan, PlanLimb } from './facts.ts';
import { type Landing, type Memo, type Part, parts, type Run } from './feed.ts';
import { type Gate, gates } from './names.ts';
import { offSquare, standingOf } from './turn.ts';
import { clearWay, isClear, type Stood, wayNames, waysAlike } from './ways.ts';
import type { LimbWork, PieceWork, PlanWork } from './work.ts';

/** `mends`: names of facts, choices, bearings or gates that would change it; `limb`: its number from 0, null for the whole plan. */
export type PlanFinding = {
  readonly level: Level;
  readonly part: Part | 'plan';
  readonly id: string;
  readonly limb: number | null;
  readonly values: Values;
  readonly guess: boolean;
  readonly mends: readonly string[];
};

/** Said by a figure of the answer already, or of what the plan settles itself. */
const unsaid: { readonly [part in Part]?: readonly string[] } = {
  dropZone: ['tooLong', 'anyPiece', 'bystanders', 'passes'],
  stance: ['underIt', 'shortestTooLong'],
  barLength: ['heavy'],
  limbWeight: ['smallSample', 'compare', 'landing', 'densityRange'],
  cutOrder: ['expect', 'readKerf'],
  approachDistance: ['filledEdges', 'plantLeads'],
};

/** Inputs of the calculators under the names the plan has for them; others have their own. */
const calledHere: { readonly [input: string]: string } = {
  groundRise: 'groundSlope', length: 'limbLength', cutAt: 'cutToStem', diameter: 'limbDiameter', buttDiameter: 'limbDiameter', poleLength: 'poleLongest',
  weight: 'limbDiameter', standOff: 'worker', landingReach: 'spread', standing: 'worker', requiredDistance: 'ruleSet', basketHigh: 'platformHeight',
};
export const nameHere = (input: string): string => calledHere[input] ?? input;

/** What would mend it, where it is not a matter of measuring alone. */
const mending: { readonly [finding: string]: readonly string[] } = {
  'stance.tipSide': ['worker'], 'stance.stemSide': ['worker'], 'stance.poleTooShort': ['poleLongest', 'workingFrom'], 'stance.heavy': ['poleLongest'],
  'dropZone.throwsBack': ['limbLength', 'worker'], 'dropZone.grounds': ['limbLength'],
  'barLength.barTooShort': ['barLength'],
  'limbWeight.unknownSpecies': ['species'], 'limbWeight.dryButWet': ['condition'], 'limbWeight.basicOnly': ['species'],
  'cutOrder.overAlready': ['limbLength'], 'cutOrder.eitherSide': ['support'], 'cutOrder.mayTurn': ['support'], 'cutOrder.nearTurn': ['cutToStem'],
  'cutOrder.bothSwing': ['worker'], 'cutOrder.undercutDeep': ['undercut'], 'cutOrder.undercutShallow': ['undercut'],
  'approachDistance.unknownVoltage': ['voltage'], 'approachDistance.ownSmaller': ['ownDistance'], 'approachDistance.noSet': ['ruleSet'],
  'approachDistance.guessedVoltage': ['toldBy'], 'approachDistance.unseen': ['ruleSet'], 'approachDistance.aboveInside': ['lineHeight'],
  'approachDistance.movementOnTop': ['movement'], 'approachDistance.spotter': ['watcher'], 'approachDistance.noPlatform': ['workingFrom'],
  'lineClearance.tooNear': ['lineOffset', 'worker', 'poleLongest'], 'lineClearance.over': ['lineOffset', 'worker'], 'lineClearance.heldNear': ['worker', 'poleLongest'],
  'lineClearance.limbNear': ['lineOffset', 'limbLength'], 'lineClearance.notIfYouStumble': ['worker', 'poleLongest'], 'lineClearance.parentSprings': ['springUp'],
  'lineClearance.noMovement': ['movement'], 'lineClearance.askFirst': ['lineOffset'],
};

/** What a calculator does not cover: the facts it turns on. Wood that nobody may cut is mended by none. */
const turningOn: { readonly [limit: string]: readonly string[] } = {
  'cutOrder.top': ['limbAngle'], 'cutOrder.beyondEnd': ['limbLength', 'cutToStem'], 'dropZone.tipInGround': ['limbLength', 'limbAngle', 'cutHeight'],
  'stance.belowGrip': ['cutHeight', 'gripHeight'], 'stance.belowPlatform': ['platformHeight'],
  'approachDistance.rail': ['lineKind'], 'approachDistance.unknownVoltage': ['voltage', 'toldBy'], 'approachDistance.belowFirstBand': ['voltage'], 'approachDistance.aboveLastBand': ['voltage'],
};

/** Facts that went into a run judged by eye: measured, a finding that only the guesses raise may go. The strength of the wood is measured at no tree. */
const judgedIn = ({ part, inputs, got }: Run): string[] =>
  Object.entries(parts[part].inputs as unknown as { readonly [name: string]: AnyInput })
    .filter(([name, input]) => name !== 'strength' && input.kind === 'quantity' && input.tolerance !== null && 'judged' in input.tolerance && got[name] === 'judged' && inputs[name] !== null)
    .map(([name]) => nameHere(name));

const ofRun = (run: Run, limb: number | null): PlanFinding[] => {
  const { part, outcome } = run;
  const own = (level: Level, id: string, values: Values, mends: readonly string[], guess = false): PlanFinding => ({ level, part, id, limb, values, guess, mends: [...new Set(mends)] });
  if (outcome.kind === 'problems') return outcome.problems.map(({ input, problem, values }) => own('stop', 'cannotWork', { ...values, problem }, [nameHere(input)]));
  if (outcome.kind === 'outside') return [own('stop', 'outside', { ...outcome.values, limit: outcome.limit }, turningOn[`${part}.${outcome.limit}`] ?? [])];
  return outcome.findings.filter(({ id }) => !unsaid[part]?.includes(id)).map(({ id, level, values, guess }) =>
    own(level, id, values, [...(mending[`${part}.${id}`] ?? []), ...(guess ? judgedIn(run) : [])], guess));
};

const ofPlan = (level: Level, id: string, limb: number | null, values: Values, mends: readonly string[]): PlanFinding => ({ level, part: 'plan', id, limb, values, guess: false, mends });

/** The figure that a finding is judged by, and which end of it is the worse. */
const worseBy: { readonly [finding: string]: readonly [value: string, end: 'least' | 'most'] } = {
  'dropZone.throwsBack': ['inward', 'most'], 'stance.heavy': ['angleAtNearest', 'least'], 'cutOrder.overAlready': ['stress', 'most'],
  'lineClearance.tooNear': ['leastGap', 'least'], 'lineClearance.heldNear': ['workingGap', 'least'], 'lineClearance.limbNear': ['limbGap', 'least'],
  'lineClearance.notIfYouStumble': ['reachGap', 'least'],
};
const isWorse = ({ part, id, values }: PlanFinding, than: PlanFinding): boolean => {
  const by = worseBy[`${part}.${id}`];
  if (!by) return false;
  const [here, there] = [values[by[0]] as number, than.values[by[0]] as number];
  return by[1] === 'least' ? here < there : here > there;
};

/** Of several that say the same of one limb, as pieces and both ends of the line's place often do, one stays, with the worst figure of all. */
const once = (findings: readonly PlanFinding[]): PlanFinding[] => {
  const said = new Map<string, PlanFinding>();
  for (const finding of findings) {
    const { part, id, limb, values } = finding;
    const key = [part, id, limb, values['limit'], values['problem'], values['way'], id === 'gateNo' && values['gate']].join();
    const before = said.get(key);
    if (!before) said.set(key, finding);
    else if (isWorse(finding, before)) said.set(key, { ...before, values: finding.values });
  }
  return [...said.values()];
};

/** The landing is further than the pole lets one stand; a pole that does not get there is said by the calculator. */
const nowhere = (piece: PieceWork, limb: number): PlanFinding[] => {
  const { reaches, landing } = piece;
  if (!reaches || landing === null) return [];
  return [ofPlan('stop', 'nowhere', limb, { towards: landing.towards }, ['poleLongest', 'spread', 'limbLength', 'workingFrom'])];
};

/** Said of body, pole and platform, or of all together: with no place to stand they mean nothing. What they say of the limb, `limbNear` says. */
const ofStanding = ['tooNear', 'over', 'heldNear', 'notIfYouStumble'];

/** A side that the worker stands on only by what a bearing may be out is said as that: nothing is to be measured, but they may stand squarer. */
const ofStance = ({ stance }: PieceWork, { bearings: { points, worker } }: PlanLimb, limb: number): PlanFinding[] =>
  ofRun(stance, limb).map((finding) =>
    (finding.id === 'tipSide' || finding.id === 'stemSide') && standingOf(points, worker, offSquare(points, worker)) === 'beside'
      ? ofPlan(finding.level, finding.id === 'tipSide' ? 'mayBeTipSide' : 'mayBeStemSide', limb, {}, ['worker']) : finding);

const ofPiece = (piece: PieceWork, of: PlanLimb, limb: number): PlanFinding[] => [
  ...ofStance(piece, of, limb),
  ...[piece.dropZone, ...(piece.order ? [piece.order] : []), ...(piece.load ? [piece.load] : []), ...piece.clearance].flatMap((run) => ofRun(run, limb)),
  ...piece.limbAlone.flatMap((run) => ofRun(run, limb)).filter(({ id }) => !ofStanding.includes(id)),
];

/** Two ways out that are as one, and a way out that leads under it, or too near the line: with the bearing that keeps clear instead, `take`, where there is one. */
const ofWays = (plan: Plan, required: number | null, { limb, pieces }: LimbWork, number: number, memo: Memo): PlanFinding[] => {
  const places = pieces.flatMap(({ piece, stand, landing, ways }): Stood[] => (ways ? [{ piece, standOff: stand!.standOff, landing: landing as Landing }] : []));
  const alike = places.length > 0 && waysAlike(limb);
  const instead = alike ? clearWay(plan, limb, places, 'wayOut2', required, memo) : null;
  const asOne = alike ? [ofPlan('caution', 'waysAlike', number, { way: 'wayOut2', ...(instead === null ? {} : { take: instead }) }, ['wayOut2'])] : [];
  return asOne.concat(wayNames.flatMap((name) => {
    const ways = pieces.flatMap((piece) => (piece.ways ? [piece.ways[name]] : []));
    if (ways.every(isClear)) return [];
    const take = clearWay(plan, limb, places, name, required, memo);
    const values = { way: name, ...(take === null ? {} : { take }) };
    const mends = take === null ? ['worker', 'line'] : [name];
    return [
      ...(ways.some(({ under }) => under) ? [ofPlan('caution', 'wayBack', number, values, mends)] : []),
      ...(ways.some(({ lineRoom }) => lineRoom !== null && lineRoom < 0) ? [ofPlan('stop', 'wayToLine', number, values, mends)] : []),
    ];
  }));
};

const ofLimb = (plan: Plan, required: number | null, work: LimbWork, number: number, memo: Memo): PlanFinding[] => {
  const { limb, pieces, fits, bar, weight } = work;
  return [
    ...(fits ? [] : nowhere(pieces[0] as PieceWork, number)),
    ...(pieces.length > 1 ? [ofPlan('note', 'inPieces', number, { count: pieces.length }, ['limbLength', 'spread'])] : []),
    ...[bar, weight].flatMap((run) => ofRun(run, number)),
    ...pieces.flatMap((piece) => ofPiece(piece, limb, number)),
    ...ofWays(plan, required, work, number, memo),
  ];
};

const ofGate = (gate: Plan['gate']): PlanFinding[] => gates.flatMap((name: Gate) =>
  gate[name] === 'no' ? [ofPlan('stop', 'gateNo', null, { gate: name }, [name])] : gate[name] === null ? [ofPlan('caution', 'gateOpen', null, { gate: name }, [name])] : []);

/** The gate alone, for a plan that cannot be worked out yet. */
export const gateFindings = (plan: Plan): PlanFinding[] => sorted(ofGate(plan.gate));

const sorted = (findings: readonly PlanFinding[]): PlanFinding[] =>
  once([...findings].sort((a, b) => worstFirst(a, b) || Number(a.guess) - Number(b.guess)));

export const findingsOf = (plan: Plan, work: PlanWork, memo: Memo = new Map()): PlanFinding[] => sorted([
  ...ofGate(plan.gate),
  ...(work.distance && ruleChanged(plan) ? [ofPlan('caution', 'ruleChanged', null, {}, ['ruleSet'])] : []),
  ...(work.distance ? ofRun(work.distance, null) : [ofPlan('caution', 'noWires', null, {}, ['wires'])]),
  ...work.limbs.flatMap((limb, i) => ofLimb(plan, work.required, limb, i, memo)),
]);
