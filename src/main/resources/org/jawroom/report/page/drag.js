/*
 * Dragging with mouse, pen or finger: one pointer at a time; offsets in pixels from where it went
 * down.
 */
const Drag = (() => {
  function attach(svg, options) {
    let held = null;

    svg.addEventListener('pointerdown', (event) => {
      const grip = event.target.closest('[data-drag]');
      if (grip === null || held !== null || event.button !== 0) {
        return;
      }
      event.preventDefault();
      svg.setPointerCapture(event.pointerId);
      held = { id: event.pointerId, what: grip.dataset.drag, at: [event.clientX, event.clientY], from: null };
      svg.classList.add('dragging');
    });

    svg.addEventListener('pointermove', (event) => {
      if (held === null || held.id !== event.pointerId) {
        return;
      }
      event.preventDefault();
      /* The picture may be displayed at another size than it was drawn. */
      const shown = svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
      const by = [(event.clientX - held.at[0]) * shown, (event.clientY - held.at[1]) * shown];
      held.from = options.pull(held.what, held.from, by);
    });

    const release = (event) => {
      if (held !== null && held.id === event.pointerId) {
        held = null;
        svg.classList.remove('dragging');
      }
    };
    svg.addEventListener('pointerup', release);
    svg.addEventListener('pointercancel', release);
  }

  return { attach: attach };
})();
