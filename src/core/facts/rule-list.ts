// Written by src/build/rule-list.mjs from the files of shared/tables/rules. Add a file there, not a line here.
import r0 from '#shared/tables/rules/au-act.json' with { type: 'json' };
import r1 from '#shared/tables/rules/au-nsw.json' with { type: 'json' };
import r2 from '#shared/tables/rules/au-qld.json' with { type: 'json' };
import r3 from '#shared/tables/rules/au-sa.json' with { type: 'json' };
import r4 from '#shared/tables/rules/au-sa-assessed.json' with { type: 'json' };
import r5 from '#shared/tables/rules/au-tas.json' with { type: 'json' };
import r6 from '#shared/tables/rules/au-vic.json' with { type: 'json' };
import r7 from '#shared/tables/rules/au-wa.json' with { type: 'json' };
import r8 from '#shared/tables/rules/au-wa-any-work.json' with { type: 'json' };
import r9 from '#shared/tables/rules/ca-ab.json' with { type: 'json' };
import r10 from '#shared/tables/rules/ca-bc.json' with { type: 'json' };
import r11 from '#shared/tables/rules/ca-on.json' with { type: 'json' };
import r12 from '#shared/tables/rules/ca-qc.json' with { type: 'json' };
import r13 from '#shared/tables/rules/ca-qc-pruning.json' with { type: 'json' };
import r14 from '#shared/tables/rules/de.json' with { type: 'json' };
import r15 from '#shared/tables/rules/eu-en-50110.json' with { type: 'json' };
import r16 from '#shared/tables/rules/fr.json' with { type: 'json' };
import r17 from '#shared/tables/rules/gb.json' with { type: 'json' };
import r18 from '#shared/tables/rules/ie.json' with { type: 'json' };
import r19 from '#shared/tables/rules/it.json' with { type: 'json' };
import r20 from '#shared/tables/rules/nz.json' with { type: 'json' };
import r21 from '#shared/tables/rules/us-1910-333.json' with { type: 'json' };
import r22 from '#shared/tables/rules/us-california.json' with { type: 'json' };
import r23 from '#shared/tables/rules/us-tree-standard.json' with { type: 'json' };

export const ruleFiles = {
  'au-act': r0,
  'au-nsw': r1,
  'au-qld': r2,
  'au-sa': r3,
  'au-sa-assessed': r4,
  'au-tas': r5,
  'au-vic': r6,
  'au-wa': r7,
  'au-wa-any-work': r8,
  'ca-ab': r9,
  'ca-bc': r10,
  'ca-on': r11,
  'ca-qc': r12,
  'ca-qc-pruning': r13,
  'de': r14,
  'eu-en-50110': r15,
  'fr': r16,
  'gb': r17,
  'ie': r18,
  'it': r19,
  'nz': r20,
  'us-1910-333': r21,
  'us-california': r22,
  'us-tree-standard': r23,
};
