/**
 * The one inline script of the head. It runs before anything is painted, so that a page never shows the wrong light,
 * the wrong units, or the example's figures where a link brought its own.
 *
 * On `<html>` it sets: `data-script` (scripts run), `data-theme` and `data-units` (kept on this device; the units in the
 * address go first), and on a calculator page whose address holds inputs `data-linked`, which the island takes away once
 * it has read them. The policy of the pages allows it by the hash of this exact string.
 */
export const headScript = [
  '(function(d,q){',
  'd.script="";',
  'try{var s=JSON.parse(localStorage.getItem("standing-clear.settings"))||{};',
  'if(/^(light|dark)$/.test(s.theme))d.theme=s.theme;',
  'if(/^(metric|imperial)$/.test(s.units))d.units=s.units}catch(e){}',
  'var u=/[?&]units=(metric|imperial)(&|$)/.exec(q);if(u)d.units=u[1];',
  'if(d.kind==="calculator"&&/[?&](?!(v|got|measured|exact|units|rules|frame)(=|&|$))[^&=]/.test(q))d.linked=""',
  '})(document.documentElement.dataset,location.search)',
].join('');
