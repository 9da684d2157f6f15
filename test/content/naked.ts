/** Finds figures of the trade that stand in words without having come from `shared/`. */
const counts = 'one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|hundred|thousand';
const lengths = 'millimet(?:re|er)|centimet(?:re|er)|kilomet(?:re|er)|met(?:re|er)|inch|inche|feet|foot|yard';
const others = 'degree|kilogram|kilo|pound|tonne|newton|joule|second|minute|hour|day|week|month|year|season|volt|kilovolt|lit(?:re|er)|gallon|per ?cent|decibel';

/** Citations and dates: figures that name a place in a text, or a year. Everything else with a digit is a figure. */
const passes = [
  // The number of an item in a list.
  /^\d+\. (?=\S)/gm,
  /\b\d+ CFR [\d.]+(?:\([a-z0-9]+\))*/g,
  /\b(?:EN |BS |AS |NZS |AS\/NZS |ANSI |IEC |EN ISO |BS EN )*(?:ISO|EN|BS|AS|NZS|ANSI|ASTM|IEC|A300|Z133|NZECP|WAC|CFR|EDIS|DGUV Regel|FPL-GTR|GTR|CIR|HS)[ -]?[A-Z]?\d[\d.:/-]*(?:\([a-z0-9]+\))*/g,
  /\b(?:[Ss]ection|[Cc]lause|[Tt]able|[Ff]igure|[Aa]rticle|[Pp]aragraph|[Cc]hapter|[Pp]age|[Rr]egulation|[Ss]chedule) [A-Z]?-?\d[\d.-]*[a-z]?(?:\([a-z0-9]+\))*/g,
  /\bA4\b|\bA\(8\)/g,
  /https?:\/\/\S+/g,
  /\b(?:19|20)\d\d\b/g,
];

const patterns = [
  /\S*\d\S*(?: ?(?:mm|cm|m|km|in|ft|kg|lb|kV|V|°|deg|%|dB\S*)(?![a-z]))?/g,
  /[½⅓⅔¼¾⅛⅕°%]/g,
  new RegExp(`\\b(?:${counts})(?: and a half|[- ](?:${counts}))*[- ](?:${lengths}|${others})s?\\b`, 'gi'),
  /\b(?:one|two|three) (?:\w+ )?(?:lengths?|heights?)\b/gi,
  /\b(?:a|an|one|two|three|four) (?:half|halves|third|thirds|quarter|quarters|fifth|fifths|tenth|tenths)\b/gi,
  /\b(?:half|halves|halved?|halving|quarters?|two-thirds|one-third|thirds)\b/gi,
  /\b(?:twice|thrice|double[ds]?|doubling|treble[ds]?|triple[ds]?|\w+fold)\b/gi,
  /\b(?:right|straight) angles?\b/gi,
  /\b(?:knee|waist|shoulder|breast|finger|hand|thumb|arm)['’]?s?[- ](?:width|breadth|length)\b/gi,
];

/**
 * @param text words as the reader meets them; `{fact-id}` and ▢ stand for figures that have a source
 * @returns what looks like a figure, worded share, ratio or angle of its own
 */
export const nakedFigures = (text: string): string[] => {
  let rest = text.replace(/\{[^{}]*\}/g, ' ');
  for (const pass of passes) rest = rest.replace(pass, ' ');
  return patterns.flatMap((pattern) => [...rest.matchAll(pattern)].map(([found]) => found.trim()));
};
