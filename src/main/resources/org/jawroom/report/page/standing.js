/* Where the vise shown stands on the machine now, by the table standing, and the way from there. */
const Standing = (() => {
  /* The states in which it stands, like one given; none where its mount does not hold. */
  const states = (ctx, like) => (ctx.pairing.stands || []).flatMap(([turn, mount, x, y, close]) => {
    const seat = ctx.seats.find((one) => one.turn === turn && one.mount === mount);
    return seat !== undefined && Model.nearestPlace(seat.places, x, y).off === 0
      ? [Object.assign({}, like, { turn: turn, mount: mount, thread: seat.thread, x: x, y: y, close: close })]
      : [];
  });

  const way = (by, more, less) => (by === 0
    ? []
    : [Words.withUnit(Words.place(Math.abs(by))) + ' to the ' + (by < 0 ? less : more)]);

  const standingAt = (ctx, now) => ctx.standing.find((one) => one.turn === now.turn
    && one.mount === now.mount && one.x === now.x && one.y === now.y);

  /* The other vises on the table that are closer than the spacing, if it is shown where it stands. */
  function crowd(ctx, now) {
    const here = standingAt(ctx, now);
    return here === undefined ? [] : here.close.map(([name, sure, gap]) => {
      if (gap === undefined) {
        return 'how close ' + name + ' is rests on what is not measured';
      }
      return (sure ? '' : 'perhaps ') + (gap < 0
        ? 'overlaps ' + name + ' by ' + Words.withUnit(Words.upCoarse(-gap)) + ', jaws at some opening'
        : 'only ' + Words.withUnit(Words.coarseDown(gap)) + ' from ' + name);
    });
  }

  /* How far the recommended place is, if the vise is shown where it stands; else empty. */
  function words(ctx, now) {
    const here = standingAt(ctx, now) !== undefined;
    if (!here || ctx.pairing.start === true) {
      return here ? 'Here it stands now.' : '';
    }
    const ways = [
      ...way(ctx.pairing.at[0] - now.x, 'right', 'left'),
      ...way(ctx.pairing.at[1] - now.y, 'rear', 'front'),
      ...(now.turn === ctx.pairing.turn ? [] : ['handle to the ' + ctx.pairing.turn]),
    ];
    return 'Here it stands now. The recommended place: ' + (ways.join(', ') || 'other bolts') + '.';
  }

  const buttons = (ctx, show) => ctx.standing.map((state, index) => Controls.button(
    ctx.standing.length > 1 ? 'Where no. ' + (index + 1) + ' stands now' : 'Where it stands now',
    () => show(state), { id: 'to-standing-' + (index + 1) }));

  return { states: states, crowd: crowd, words: words, buttons: buttons };
})();
