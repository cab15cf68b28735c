/**
 * Has the whole workbook kept on this device, for rooms without a network, and says so once it is. A device that saves
 * data is asked first.
 */
function say(): void {
  for (const place of document.querySelectorAll<HTMLElement>('[data-kept]')) place.dataset['kept'] = 'yes';
}

async function keepAll(): Promise<void> {
  const base = import.meta.env.BASE_URL.replace(/\/*$/, '/');
  try {
    await navigator.serviceWorker.register(`${base}worker.js`, { scope: base });
    await navigator.serviceWorker.ready;
    say();
  } catch {
    // Without a worker the pages come from the network as they always did.
  }
}

const { serviceWorker, connection } = navigator as Navigator & { connection?: { saveData?: boolean } };
if (import.meta.env.PROD && serviceWorker) {
  if (serviceWorker.controller || !connection?.saveData) addEventListener('load', () => void keepAll());
  else
    for (const button of document.querySelectorAll<HTMLButtonElement>('[data-keep]')) {
      button.hidden = false;
      button.addEventListener('click', () => {
        button.hidden = true;
        void keepAll();
      });
    }
}
