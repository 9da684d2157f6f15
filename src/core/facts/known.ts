/** How the facts that stand behind a card's figures are known; a card says so beside each. */
import bar from '#shared/values/bar.json' with { type: 'json' };
import cuts from '#shared/values/cuts.json' with { type: 'json' };
import lines from '#shared/values/lines.json' with { type: 'json' };
import reduction from '#shared/values/reduction.json' with { type: 'json' };
import standing from '#shared/values/standing.json' with { type: 'json' };
import vibration from '#shared/values/vibration.json' with { type: 'json' };

export type Known = 'published' | 'second-hand' | 'derived' | 'practice' | 'memory' | 'entered';
const topics = { bar, cuts, lines, reduction, standing, vibration };
type Topics = typeof topics;

/** The weakest of the facts' own words for how they are known. */
export const knownOf = <T extends keyof Topics>(topic: T, key: keyof Topics[T]): Known => (topics[topic][key] as { status: Known }).status;
