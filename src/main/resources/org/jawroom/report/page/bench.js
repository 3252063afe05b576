/* The drawing of one pairing, the controls that move it, and the resulting gaps. */
const Bench = (() => {
  const LISTED = 8;
  let ctx = null;
  let parts = null;
  let pending = false;

  /* Takes up a pairing: where the vise stands now, or else where it is recommended. */
  function begin(context) {
    ctx = context;
    ctx.zoom = window.innerWidth < 640 ? 'near' : 'whole';
    if (ctx.pairing.seats !== undefined) {
      ctx.seats = ctx.pairing.seats.map(Model.seat);
      ctx.standing = Standing.states(ctx, recommended());
      ctx.state = tightest(ctx.standing.length > 0 ? ctx.standing[0] : recommended());
    }
  }

  function recommended() {
    const pairing = ctx.pairing;
    const seat = ctx.seats.find((one) => one.turn === pairing.turn && one.mount === pairing.mount);
    return {
      turn: seat.turn,
      mount: seat.mount,
      thread: seat.thread,
      x: pairing.at[0],
      y: pairing.at[1],
      situation: Model.CUTTING,
      spindleX: ctx.machine.spindle[0],
      spindleY: ctx.machine.spindle[1],
      opening: pairing.openings[0],
      hand: pairing.hand ? ctx.data.handRoom : 0,
    };
  }

  const tightest = (state) =>
    Model.tightest(ctx.data, ctx.machine, ctx.vise, state, ctx.pairing.openings) || state;

  /* The seat for the state's turn and mount. */
  const seat = () => ctx.seats.find(
    (one) => one.turn === ctx.state.turn && one.mount === ctx.state.mount);
  const place = () => seat().places[Model.nearestPlace(seat().places, ctx.state.x, ctx.state.y).index];

  /* While cutting the axes stand where the reader put them; while loading, at the load position. */
  const moment = () => Model.inSituation(ctx.machine, ctx.state);

  /* All of it, to be put into the page and then synced. */
  function box() {
    parts = {};
    parts.plan = Dom.draw('svg', { id: 'plan', role: 'img', class: 'plan' });
    parts.side = Dom.draw('svg', { id: 'side', role: 'img', class: 'side' });
    parts.now = Dom.make('p', { id: 'now', role: 'status' });
    parts.rows = Dom.make('tbody', {});
    parts.where = Dom.make('p', { id: 'where', class: 'note' });
    parts.doubts = Dom.make('p', { id: 'doubts', role: 'status' });
    parts.range = Dom.make('p', { class: 'note', id: 'range' }, Readout.range(ctx, recommended()));
    parts.travel = Dom.make('p', { class: 'note', id: 'travel' });
    parts.here = Dom.make('p', { id: 'here' });
    parts.moment = Dom.make('p', { class: 'note', id: 'moment' });
    parts.reason = Dom.make('p', { class: 'note', id: 'jog-reason' });
    Drag.attach(parts.plan, { pull: pull });
    const part = (name, ...children) => Dom.make('div', { class: name }, ...children);
    return part('bench',
      part('column',
        part('plan-box', zoom(), parts.plan),
        part('gaps-box', Readout.table(parts.rows), parts.travel, Checks.box()),
        part('side-box', parts.side,
          Dom.make('p', { class: 'note' }, 'The same from the right; the operator stands on the left.'))),
      part('column',
        parts.box = part('now-box', parts.now, parts.here, parts.doubts),
        part('controls-box', controls(), OpenReadings.box(ctx, redraw)),
        part('words-box', parts.moment, parts.where, parts.range,
          Dom.make('p', { class: 'note' }, 'The plan is seen from above and from the table: what moves against'
            + ' the table moves in the picture. Hatched: guards where they stand now; tinted: what they sweep'
            + ' over the whole travel; dash and dot: what the spindle reaches. Drag the vise, or the'
            + ' spindle’s cross; the vise goes where its bolts or clamps hold.'),
          ctx.vise.turned === true ? Dom.make('p', { class: 'note' }, 'What is turned is drawn at every opening of the slider at once.'
            + ' Its gaps are those of the strips that show round it, which claim up to 5 mm too much.') : null)));
  }

  function zoom() {
    const made = Controls.segments('zoom', 'Show', [['whole', 'whole table'], ['near', 'close up']], (chosen) => {
      ctx.zoom = chosen;
      redraw();
    });
    made.set(ctx.zoom);
    return made.element;
  }

  function controls() {
    const box = Dom.make('div', { id: 'controls' });
    parts.situation = Controls.segments('situation', 'Situation',
      [[Model.CUTTING, 'cutting'], [Model.LOADING, 'loading']], (value) => {
        ctx.state.situation = Number(value);
        sync();
      });
    parts.opening = jog('opening', 'Jaws open', ctx.jaws, (length) => {
      ctx.state.opening = length;
    });
    parts.spindleX = jog('spindle-x', 'Spindle over the table, x', range(0), (length) => {
      ctx.state.spindleX = length;
    }, 'jog-reason');
    parts.spindleY = jog('spindle-y', 'Spindle over the table, y', range(1), (length) => {
      ctx.state.spindleY = length;
    }, 'jog-reason');
    parts.places = Dom.make('div', {});
    box.append(
      parts.situation.element, parts.opening.element, parts.spindleX.element, parts.spindleY.element,
      parts.reason, parts.places,
      Dom.make('div', { class: 'buttons' },
        Controls.button('Tightest moment here', () => {
          ctx.state = tightest(ctx.state);
          sync();
        }, { id: 'to-tightest' }),
        Controls.button(ctx.pairing.start === true ? 'Starting place' : 'Recommended place', () => {
          ctx.state = tightest(recommended());
          sync();
        }, { id: 'to-recommended' }),
        ...Standing.buttons(ctx, (state) => {
          ctx.state = tightest(state);
          sync();
        })));
    return box;
  }

  const range = (index) => [
    ctx.machine.spindle[index] - ctx.machine.reach[index],
    ctx.machine.spindle[index] + ctx.machine.reach[index],
  ];

  function jog(id, label, ends, set, describedBy) {
    return Controls.slider({
      id: id,
      label: label,
      least: ends[0],
      most: ends[1],
      step: Words.slide(),
      press: Words.step(),
      value: ends[0],
      describedBy: describedBy,
      format: (length) => Words.withUnit(Words.finePlace(length)),
      changed: (length) => {
        set(length);
        redraw();
      },
    });
  }

  /* Turn and mount, slots, and the position within the play of slots and holes. */
  function placeControls() {
    /* Rebuilding loses the focus, so it is set again. */
    const focused = parts.places.contains(document.activeElement) ? document.activeElement.id : '';
    const box = Dom.clear(parts.places);
    if (ctx.seats.length > 1) {
      box.append(Controls.choice('seat', 'Handle to, mount', ctx.seats.map((one, index) => [
        index, one.turn + ' · ' + Readout.held(ctx.vise, one)]), ctx.seats.indexOf(seat()), (index) => {
        const next = ctx.seats[Number(index)];
        moveTo(next, ctx.state.x, ctx.state.y);
        sync();
      }).element);
    }
    const here = place();
    if (seat().places.length > 1) {
      box.append(Controls.choice('slots', 'In slots', seat().places.map((one, index) => [
        index, slotWords(one)]), seat().places.indexOf(here), (index) => {
        const next = seat().places[Number(index)];
        const at = Model.nearestPlace([next], ctx.state.x, ctx.state.y);
        ctx.state.x = at.x;
        ctx.state.y = at.y;
        sync();
      }).element);
    }
    parts.x = placeSlider('vise-x', 'Vise left – right', here.x, 'x');
    parts.y = placeSlider('vise-y', 'Vise front – rear', here.y, 'y');
    box.append(parts.x.element, parts.y.element);
    if (focused !== '') {
      const again = Dom.byId(focused);
      (again === null || again.disabled ? parts.situation.element : again).focus();
    }
  }

  function placeSlider(id, label, ends, axis) {
    const made = jog(id, label, ends, (length) => {
      ctx.state[axis] = length;
    });
    made.enable(ends[0] < ends[1]);
    return made;
  }

  const middle = (interval) => Math.floor((interval[0] + interval[1]) / 2);

  function slotWords(places) {
    const at = Object.assign({}, ctx.state, { x: middle(places.x), y: middle(places.y) });
    return Readout.inSlots(ctx, at);
  }

  /* Where it can be tapped square within the tap room, it goes there. */
  function moveTo(next, x, y) {
    const held = Model.nearestPlace(next.places, x, y);
    const square = Model.nearestPlace(next.settable, held.x, held.y);
    const at = square !== null && square.off <= ctx.data.tapRoom ? square : held;
    ctx.state = Object.assign({}, ctx.state, {
      turn: next.turn, mount: next.mount, thread: next.thread, x: at.x, y: at.y,
    });
  }

  /* Dragging moves the vise or the spindle's cross; the vise stays where its bolts or clamps hold. */
  function pull(what, from, by) {
    const before = from || { state: Object.assign({}, ctx.state) };
    const grain = Words.slide() / 5;
    const to = (length, shift) => Math.round((length + shift / ctx.frame.scale) / grain) * grain;
    if (what === 'vise') {
      moveTo(seat(), to(before.state.x, by[0]), to(before.state.y, -by[1]));
    } else if (ctx.state.situation === Model.CUTTING) {
      const x = range(0);
      const y = range(1);
      ctx.state.spindleX = Math.max(x[0], Math.min(x[1], to(before.state.spindleX, by[0])));
      ctx.state.spindleY = Math.max(y[0], Math.min(y[1], to(before.state.spindleY, -by[1])));
    }
    sync();
    return before;
  }

  /* Sets every control from the state, then draws. */
  function sync() {
    const now = moment();
    const cutting = now.situation === Model.CUTTING;
    parts.situation.set(ctx.state.situation);
    parts.opening.set(now.opening);
    parts.spindleX.set(now.spindleX);
    parts.spindleY.set(now.spindleY);
    parts.spindleX.enable(cutting);
    parts.spindleY.enable(cutting);
    parts.reason.textContent = cutting
      ? ''
      : 'While loading the axes stand at the load position; the door is open and the nose is up.';
    placeControls();
    parts.x.set(now.x);
    parts.y.set(now.y);
    redraw();
  }

  function redraw() {
    if (!pending) {
      pending = true;
      requestAnimationFrame(() => {
        pending = false;
        draw();
      });
    }
  }

  function draw() {
    if (ctx === null || ctx.state === undefined || Dom.byId('pairing').hidden) {
      return;
    }
    const now = moment();
    const gaps = Model.gaps(ctx.data, ctx.machine, ctx.vise, now);
    const drawn = Object.assign({}, ctx, { state: now, gaps: gaps });
    const width = Math.max(280, parts.plan.parentElement.clientWidth);
    ctx.frame = Drawing.plan(parts.plan, drawn, width);
    Drawing.side(parts.side, drawn, width);
    announce(gaps, now);
  }

  function announce(gaps, now) {
    const supposing = OpenReadings.words(ctx);
    const words = (supposing === '' ? '' : supposing + ', no verdict. ') + (gaps.length === 0
      ? 'Nothing listed can be hit now.'
      : 'Now: ' + Readout.stateWords(gaps[0]));
    if (parts.now.textContent !== words) {
      parts.now.textContent = words;
    }
    parts.now.className = gaps.length === 0 ? '' : 's-' + Words.state(gaps[0]).name;
    parts.plan.setAttribute('aria-label', 'Plan from above. ' + words);
    parts.side.setAttribute('aria-label', 'Side from the right. ' + words);
    Dom.clear(parts.rows).append(...gaps.slice(0, LISTED).map(Readout.row));
    parts.travel.textContent = Readout.travel(ctx, now);
    parts.moment.textContent = Readout.moment(now);
    const swept = Model.sweptGaps(ctx.data, ctx.machine, ctx.vise, now, ctx.pairing.openings);
    parts.here.textContent = (supposing === '' ? '' : supposing + ': ') + Readout.here(ctx, swept);
    parts.box.classList.toggle('supposing', supposing !== '');
    parts.here.className = swept.length === 0 ? '' : 's-' + Words.state(swept[0]).name;
    const doubts = Readout.doubts(ctx, seat(), now, swept);
    if (parts.doubts.textContent !== doubts) {
      parts.doubts.textContent = doubts;
    }
    parts.box.classList.toggle('amber', doubts !== '');
    parts.plan.classList.toggle('amber', doubts !== '');
    parts.where.textContent = Readout.tape(ctx, now);
    Checks.update(ctx, now);
  }

  return { begin: begin, box: box, sync: sync, redraw: redraw, moment: moment };
})();
