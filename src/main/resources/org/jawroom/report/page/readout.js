/* The text about a moment and a place, in words and rows. */
const Readout = (() => {
  const pairWords = (gap) => gap.part.name + ' – ' + gap.guard.name;

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

  /* The solver's result for the vise's present place, over the openings that count. */
  function here(ctx, swept) {
    const [least, most] = ctx.pairing.openings;
    const over = 'Over all of travel, loading too, jaws ' + Words.fineUp(least) + ' to '
      + Words.withUnit(Words.fineDown(most)) + ', here: ';
    return swept.length === 0
      ? over + 'nothing listed can be hit.'
      : over + Words.state(swept[0]).word + ', margin ' + Words.withUnit(Words.fineDown(swept[0].margin))
        + ', ' + pairWords(swept[0]) + '.';
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
      words.push('The vise has been moved: it no longer stands where it is recommended.');
    }
    return words.join(' ');
  }

  /* Each slot once: two bolts may share one. */
  function inSlots(ctx, state) {
    const slots = Model.slots(ctx.machine, ctx.vise, state);
    return slots.filter((slot, index) => slots.indexOf(slot) === index).join(' and ');
  }

  /* The position of the vise as a setter measures it with a tape. */
  function tape(ctx, now) {
    const vise = ctx.vise;
    const slots = inSlots(ctx, now);
    const half = vise.base === undefined ? 0 : vise.base / 2;
    const face = vise.both ? 'middle between the jaws' : 'fixed-jaw face';
    const upright = Model.TURNS[now.turn].u[0] === 'y';
    const base = upright ? 'base’s left side' : 'base’s front side';
    const sideName = vise.base === undefined ? 'middle of the jaws' : base;
    const from = (length, edge) => (length >= 0
      ? Words.place(length) + ' from the table’s ' + edge + ' edge'
      : Words.place(-length) + ' beyond the table’s ' + edge + ' edge');
    const left = (x) => from(x + ctx.machine.table[0] / 2, 'left');
    const front = (y) => from(y + ctx.machine.table[1] / 2, 'front');
    const edges = upright
      ? [sideName + ' ' + left(now.x - half), face + ' ' + front(now.y)]
      : [face + ' ' + left(now.x), sideName + ' ' + front(now.y - half)];
    return 'Place: handle to the ' + now.turn + ', mount ' + vise.mounts[now.mount] + ', '
      + (slots.includes(' ') ? 'bolts in slots ' : 'bolts in slot ') + slots + ' (counted from the '
      + (ctx.machine.along === 'x' ? 'front' : 'left') + '); ' + edges.join('; ') + ' (' + Words.unit() + ').';
  }

  return {
    pairWords: pairWords, row: row, here: here, moment: moment, travel: travel, inSlots: inSlots, tape: tape,
  };
})();
