/** The schema of the file that plans are written to, for whoever reads or writes one elsewhere. */
import { planSchema } from '#components/plan-schema.ts';

export const GET = () => new Response(`${JSON.stringify(planSchema, null, 1)}\n`, { headers: { 'content-type': 'application/schema+json' } });
