import { render } from 'solid-js/web';
import { type KnotName, knots } from '../../figures/strand/index.ts';
import { KnotStepper } from './knot-stepper.tsx';

const isKnot = (name: string): name is KnotName => Object.hasOwn(knots, name);

/**
 * Puts a stepper into a plate in place of its stages, and its stages back when it is closed. The focus goes with it: to
 * what steps on, and back to the button that was pressed.
 *
 * @param ground what holds the stages; the stepper becomes its first child, which the large view of a plate takes
 * @param button says which knots, and round how many strings, in `data-knots` and `data-strands`
 */
export function wakeStepper(ground: HTMLElement, button: HTMLElement): void {
  const [first, ...others] = (button.dataset['knots'] ?? '').split(' ').filter(isKnot);
  if (!first) return;
  const place = document.createElement('div');
  place.className = 'knot-place';
  const stages = [...ground.children];
  const close = () => {
    const dialog = place.closest('dialog');
    if (dialog?.open) {
      // The large view gives the stepper back first, and then calls again.
      dialog.addEventListener('close', close, { once: true });
      dialog.close();
      return;
    }
    dispose();
    place.remove();
    for (const stage of stages) stage.removeAttribute('data-knot-away');
    button.hidden = false;
    button.focus();
    ground.dispatchEvent(new CustomEvent('knot-closed'));
  };
  const dispose = render(
    () => <KnotStepper knots={[first, ...others]} strands={Number(button.dataset['strands']) || 1} onClose={close} />,
    place,
  );
  for (const stage of stages) stage.setAttribute('data-knot-away', '');
  ground.prepend(place);
  button.hidden = true;
  place.querySelector<HTMLElement>('[data-knot-next]')?.focus();
}
