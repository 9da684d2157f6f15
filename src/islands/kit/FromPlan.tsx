/** The way back to the plan, for a calculator that was opened from there with the plan's figures. */
import { useEffect, useState } from 'preact/hooks';
import { calculator as frame } from '#content/interface.json';

export const FromPlan = ({ base }: { base: string }) => {
  const [from, setFrom] = useState(false);
  useEffect(() => setFrom(new URLSearchParams(location.search).get('frame') === 'plan'), []);
  return from ? <p class="no-print"><a class="button" href={`${base}plan/`}>{frame.backToPlan}</a></p> : null;
};
