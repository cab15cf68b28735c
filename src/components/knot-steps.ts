/** Turns a plate of a knot into its stepper. The stepper and all it draws with come when somebody asks for them. */
/** Pixels of a plate across from which its stepper is set in another way. */
const SET = { narrow: 340, wide: 620 } as const;

document.addEventListener('click', ({ target }) => {
  const button = target instanceof Element ? target.closest<HTMLElement>('[data-knots]') : null;
  const ground = button?.closest('figure')?.querySelector<HTMLElement>('[data-plate-ground]');
  if (!button || !ground || ground.dataset['steps']) return;
  // Its room is made at once, so that nothing shifts when it comes.
  const across = ground.clientWidth;
  ground.dataset['steps'] = across < SET.narrow ? 'small' : across < SET.wide ? 'narrow' : 'wide';
  const away = () => {
    delete ground.dataset['steps'];
  };
  ground.addEventListener('knot-closed', away, { once: true });
  import('../widgets/knot/wake.tsx').then(({ wakeStepper }) => wakeStepper(ground, button)).catch(away);
});
