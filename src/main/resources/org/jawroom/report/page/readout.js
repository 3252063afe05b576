/* The text about a moment and a place, in words and rows. */
const Readout = (() => {
  const pairWords = (gap) => gap.part.name + ' – ' + gap.guard.name;

  /* The state of a gap, its margin and its pair. */
  function stateWords(gap) {
    const state = Words.state(gap);
    return state.word + (state.name === 'open' ? '' : ', margin ' + Words.withUnit(Words.fineDown(gap.margin)))
      + ', ' + pairWords(gap) + '.';
  }

  function row(gap, index) {
    const state = Words.state(gap);
    const number = index < 3 ? Drawing.NUMBERS[index] + ' ' : '';
    return Dom.make('tr', { class: 's-' + state.name },
      Dom.make('th', { scope: 'row' }, number, Dom.name(gap.part.name), ' – ', Dom.name(gap.guard.name)),
      Dom.make('td', {}, Words.fineDown(gap.gap)),
      Dom.make('td', {}, Words.fineUp(gap.required)),
      Dom.make('td', {}, Words.fineUp(gap.tolerance)),
      Dom.make('td', {}, Words.fineDown(gap.margin)),
      Dom.make('td', {}, state.word));
  }

  /* The table of the nearest gaps, around its body of rows. */
  function table(rows) {
    const heading = (words) => Dom.make('th', { scope: 'col' }, words);
    return Dom.make('table', { id: 'gaps' },
      Dom.make('caption', {}, 'Nearest gaps, the tightest first'),
      Dom.make('thead', {}, Dom.make('tr', {}, heading('from – to'), heading('gap'), heading('required'),
        heading('tolerance'), heading('margin'), heading(''))),
      rows);
  }

  /* The solver's result for the vise's present place, over the openings that count. */
  function here(ctx, swept) {
    const [least, most] = ctx.pairing.openings;
    const over = 'Over all of travel, loading too, jaws ' + Words.fineUp(least) + ' to '
      + Words.withUnit(Words.fineDown(most)) + ', here: ';
    return swept.length === 0
      ? over + 'nothing listed can be hit.'
      : over + stateWords(swept[0]);
  }

  function moment(now) {
    return 'Moment: ' + (now.situation === Model.CUTTING ? 'cutting' : 'loading')
      + ', jaws open ' + Words.finePlace(now.opening) + ', spindle at x ' + Words.finePlace(now.spindleX)
      + ', y ' + Words.finePlace(now.spindleY) + ' over the table (' + Words.unit() + ').';
  }

  /* Shown because one moment does not cover the whole travel. */
  function travel(ctx, now) {
    const pairing = ctx.pairing;
    const words = ['Gaps at this one moment, with the bare vise.'];
    const [least, most] = pairing.openings;
    if (now.opening < least || now.opening > most) {
      words.push('! The jaws stand outside the usable opening, ' + Words.fineUp(least) + ' to '
        + Words.withUnit(Words.fineDown(most)) + '.');
    }
    if (now.turn !== pairing.turn || now.mount !== pairing.mount || now.x !== pairing.at[0]
        || now.y !== pairing.at[1]) {
      words.push(Standing.words(ctx, now)
        || (pairing.start === true ? '' : 'The vise has been moved: it no longer stands where it is recommended.'));
    }
    return words.join(' ');
  }

  /* Each slot once: two bolts may share one. */
  function inSlots(ctx, state) {
    const slots = Model.slots(ctx.machine, ctx.vise, state);
    return slots.filter((slot, index) => slots.indexOf(slot) === index).join(' and ');
  }

  /* Room to tap a turned vise is that at its angle, though it is tapped with its jaws square. */
  const turned = (ctx) => (ctx.vise.turned === true ? ' (computed at its angle)' : '');

  /* What keeps the present place from being a good one; empty if nothing does. */
  function doubts(ctx, seat, now, swept) {
    const words = [];
    const short = Model.shortfall(ctx.machine, ctx.vise, now);
    if (short > 0) {
      words.push('spindle misses ' + Words.withUnit(Words.upCoarse(short)) + ' of the work');
    }
    const clear = swept.length === 0 || swept[0].margin >= 0;
    if (clear && !Model.settable(ctx.data, seat, now, swept)) {
      words.push('no room to tap it square' + turned(ctx));
    }
    words.push(...Standing.crowd(ctx, now));
    return words.map((line) => '! ' + line[0].toUpperCase() + line.slice(1) + '.').join(' ');
  }

  /* What holds the vise: bolts or clamps, with their thread. */
  function held(vise, now) {
    const mount = vise.mounts[now.mount];
    const thread = 'M' + now.thread / Model.MM;
    return mount === 'clamps' ? 'strap clamps (' + thread + ' studs)' : mount + ' (' + thread + ')';
  }

  /* The position of the vise as a setter measures it with a tape. */
  function tape(ctx, now) {
    const slots = inSlots(ctx, now);
    const edges = measures(ctx, now).map((one) => one.what + ' ' + (one.at >= 0
      ? Words.place(one.at) + ' from'
      : Words.place(-one.at) + ' beyond') + ' the table’s ' + one.edge + ' edge');
    return 'Place: handle to the ' + now.turn + ', ' + held(ctx.vise, now) + ' in '
      + (slots.includes(' ') ? 'slots ' : 'slot ') + slots + ' (counted from the '
      + (ctx.machine.along === 'x' ? 'front' : 'left') + '); ' + edges.join('; ') + ' (' + Words.unit() + ').';
  }

  /* The range over which the vise may stand beside the recommended place. */
  function range(ctx, place) {
    if (ctx.pairing.range === undefined) {
      return '';
    }
    const [left, right, front, rear] = ctx.pairing.range;
    const off = { left: [left, right], front: [front, rear] };
    return 'It may stand: ' + measures(ctx, place).map((one) => one.what + ' '
      + Words.edgeRange(one.at - off[one.edge][0], one.at + off[one.edge][1]) + ' from the table’s '
      + one.edge + ' edge').join('; ') + ' (' + Words.unit() + '). Within that it stays clear'
      + (ctx.pairing.settable ? ', can be tapped square' + turned(ctx) : '') + ' and is reached as well.';
  }

  /* The two distances from the table's edges, along x first. */
  function measures(ctx, now) {
    const vise = ctx.vise;
    const half = vise.base === undefined ? 0 : vise.base / 2;
    const face = vise.both ? 'middle between the jaws' : 'fixed-jaw face';
    const upright = Model.TURNS[now.turn].u[0] === 'y';
    const base = upright ? 'base’s left side' : 'base’s front side';
    const sideName = vise.base === undefined ? 'middle of the jaws' : base;
    return [
      {
        what: upright ? sideName : face,
        edge: 'left',
        at: now.x - (upright ? half : 0) + ctx.machine.table[0] / 2,
      },
      {
        what: upright ? face : sideName,
        edge: 'front',
        at: now.y - (upright ? 0 : half) + ctx.machine.table[1] / 2,
      },
    ];
  }

  return {
    stateWords: stateWords, measures: measures, table: table, row: row, here: here, moment: moment, travel: travel,
    inSlots: inSlots, tape: tape, range: range, doubts: doubts, held: held,
  };
})();
