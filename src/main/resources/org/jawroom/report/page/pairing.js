/* One pairing: what is said of it, in the page of its machine and vise. */
const Pairing = (() => {
  let data = null;
  let open = null;
  let close = null;
  let ctx = null;

  const pairingOf = (machine, vise) => data.pairings[machine * data.vises.length + vise];

  function show(machine, vise) {
    const pairing = pairingOf(machine, vise);
    /* A turned vise that fits with its jaws kept to some openings is shown with these alone. */
    const kept = Object.assign({}, data.vises[vise], pairing.narrowed);
    ctx = {
      data: data,
      machine: data.machines[machine],
      vise: kept,
      jaws: pairing.narrowed === undefined ? kept.opening : pairing.openings,
      tables: OpenReadings.begin(data.machines[machine], kept),
      pairing: pairing,
      indices: [machine, vise],
    };
    Bench.begin(ctx);
    build();
  }

  function build() {
    const section = Dom.clear(Dom.byId('pairing'));
    const finding = data.findings[ctx.pairing.finding];
    section.append(
      navigation(),
      Dom.make('h2', { id: 'pairing-title', tabindex: -1 },
        Dom.name(ctx.vise.name), ' on ', Dom.name(ctx.machine.name)),
      Dom.make('p', { class: 'verdict' },
        Dom.make('span', { class: 'badge f-' + ctx.pairing.finding }, finding.sign + ' ' + finding.word), ' ',
        Words.pick(ctx.pairing.sentence)));
    section.append(facts());
    if (ctx.seats !== undefined) {
      section.append(Bench.box());
      Bench.sync();
    }
    lists(section);
  }

  function navigation() {
    const machine = Controls.choice('to-machine', 'Machine',
      data.machines.map((one, index) => [index, one.name]), ctx.indices[0],
      (index) => open(Number(index), ctx.indices[1]));
    const vise = Controls.choice('to-vise', 'Vise',
      data.vises.map((one, index) => [index, one.name]), ctx.indices[1],
      (index) => open(ctx.indices[0], Number(index)));
    return Dom.make('div', { class: 'tools' },
      Controls.button('◄ Matrix', close, { class: 'back', 'aria-label': 'Back to the matrix' }),
      machine.element, vise.element);
  }

  /* The facts that the matrix shows too. */
  function facts() {
    const pairing = ctx.pairing;
    const list = Dom.make('dl', { class: 'facts-list' });
    const add = (term, words) => list.append(
      Dom.make('div', {}, Dom.make('dt', {}, term), Dom.make('dd', {}, words)));
    if (pairing.limit !== undefined) {
      add('Margin', Words.withUnit(Words.fineDown(pairing.limit.margin)));
      add('Limited by', pairing.limit.part + ' to ' + pairing.limit.guard + ': '
        + Words.pick(pairing.limit.where));
    }
    if (pairing.best !== undefined) {
      add('Margin of the roomiest place, ' + (pairing.finding === 'LIMITED' ? 'full opening' : 'reached or not'),
        Words.withUnit(Words.fineDown(pairing.best)));
    }
    if (pairing.handGap !== undefined) {
      add('Room round the handle', Words.withUnit(Words.fineDown(pairing.handGap)));
    }
    if (pairing.noseNotBelow !== undefined) {
      add('Keep the nose at least', Words.withUnit(Words.upCoarse(pairing.noseNotBelow)) + ' above the table');
    }
    add('Machine', Words.pick(ctx.machine.facts));
    add('Vise', Words.pick(ctx.vise.facts));
    return list;
  }

  function lists(section) {
    const list = (heading, lines) => {
      if (lines !== undefined && lines.length > 0) {
        section.append(Dom.make('h3', {}, heading), Dom.make('ul', { class: 'lines' },
          ...lines.map(Words.pick).filter((line) => line !== '').map((line) => Dom.make('li', {}, line))));
      }
    };
    const minded = (ctx.pairing.marks || []).concat(ctx.machine.cautions || [], ctx.vise.cautions || []);
    list('To mind', minded.filter((line, index) => minded.indexOf(line) === index));
    list('Why nothing holds it', ctx.pairing.misses);
    list('Not measured', ctx.pairing.missing);
    list('What one change would make it fit, least effort first', ctx.pairing.changes);
  }

  function start(all, opener, closer) {
    data = all;
    open = opener;
    close = closer;
    window.addEventListener('resize', Bench.redraw);
  }

  return {
    start: start,
    show: show,
    unitChanged: () => {
      if (ctx !== null && !Dom.byId('pairing').hidden) {
        build();
      }
    },
    /* The moment shown, for tests that compare it with the solver. */
    shown: Bench.moment,
  };
})();
