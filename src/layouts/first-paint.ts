/** Where the choice of page colours is kept on the device. */
export const THEME_KEY = 'evenfold:theme';

/**
 * Nothing in the workbook is ever sent anywhere, so a form that is checked before its widget is awake leads nowhere.
 * A button that is pressed too early is pressed again as soon as its widget is awake.
 * Runs in the head, before anything is drawn, so that a dark room never sees a white flash and lengths
 * never change their unit before the reader’s eyes; and where the address asks for other figures, the question that the
 * page was built with is not shown until its exercise has asked the one that is wanted. It stands in the page itself
 * because a file would come too late. Storage may be refused: then the page follows the device.
 */
export const FIRST_PAINT = `(function(r){r.dataset.script='';addEventListener('submit',function(e){e.preventDefault()});addEventListener('click',function(e){var b=e.target.closest?.('astro-island[ssr] button');if(b)b.closest('astro-island').addEventListener('astro:hydrate',function(){b.click()},{once:true})});try{var t=localStorage.getItem('${THEME_KEY}');if(t==='light'||t==='dark')r.dataset.theme=t;if(JSON.parse(localStorage.getItem('evenfold.preferences')||'{}').units==='inches')r.dataset.units='inches'}catch(e){}var h=[];new URLSearchParams(location.search).forEach(function(v,k){if(/^[a-z][a-z0-9-]*$/.test(k))h.push((k==='sheet'?'.exercise':'#'+k)+' form:not([data-asked])')});if(h[0]){var y=document.createElement('style');y.textContent=h+'{visibility:hidden}';document.head.append(y)}})(document.documentElement)`;
