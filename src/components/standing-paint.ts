import { STANDING_KEY } from '../store/progress/standing.ts';

/** Dispatched on the window when what is kept of the progress has changed while the page stands there. */
export const STANDING_CHANGED = 'evenfold-standing';

/**
 * Writes into each place that waits for it how far a lesson has got and whether a skill of it is due. It stands in the
 * page itself, right behind those places, so that they are drawn once and nothing shifts. Storage may be refused or hold
 * anything: then the places stay empty, as they are without script.
 */
export const STANDING_PAINT = `(function(){function p(){var s;try{s=JSON.parse(localStorage.getItem('${STANDING_KEY}'))}catch(e){}var l=s&&s.lessons||{},d=s&&s.due||{};document.querySelectorAll('[data-standing]').forEach(function(e){var t=e.dataset;t.standing=l[t.of]||'';e.toggleAttribute('data-due',t.skills.split(' ').some(function(k){return d[k]<=Date.now()}))})}p();addEventListener('${STANDING_CHANGED}',p)})()`;
