/* Lengths and verdicts in words, in the chosen unit; every rounding is toward less clearance. */
const Words = (() => {
  /* The last displayed digit in half-nanometres, and the number of decimals. */
  const COARSE = { mm: [Model.MM / 10, 1], in: [Model.INCH / 100, 2] };
  const FINE = { mm: [Model.MM / 100, 2], in: [Model.INCH / 1000, 3] };
  const JUST = 2 * Model.MM;
  const BEYOND = ' beyond';
  let unit = 'mm';

  /* Whether a length rests on a reading without end: nobody knows it. */
  const endless = (length) => Math.abs(length) >= 25e6 * Model.MM;

  function digits(count, decimals) {
    const text = String(Math.abs(count)).padStart(decimals + 1, '0');
    const cut = text.length - decimals;
    return (count < 0 ? '−' : '') + text.slice(0, cut) + '.' + text.slice(cut);
  }

  const known = (length, words) => (endless(length) ? '?' : words());
  const down = (length, grain) => known(length, () => digits(Math.floor(length / grain[0]), grain[1]));
  const up = (length, grain) => known(length, () => digits(Math.ceil(length / grain[0]), grain[1]));
  /* A distance from a table edge, its sign in words. */
  const fromEdge = (length, rounded) => (length < 0
    ? rounded(length, COARSE[unit]).replace('−', '') + BEYOND
    : rounded(length, COARSE[unit]));
  const nearest = (length, grain) => digits(Math.floor((length + grain[0] / 2) / grain[0]), grain[1]);

  /* Hit, too close, just clear or clear: a name for the style, a word for people. */
  function state(pair) {
    if (pair.gap < 0 && endless(pair.gap)) {
      return { name: 'open', word: 'not measured' };
    }
    if (pair.gap < 0) {
      return { name: 'hit', word: 'hit' };
    }
    if (pair.margin < 0) {
      return { name: 'near', word: 'too close' };
    }
    return pair.margin < JUST ? { name: 'just', word: 'just clear' } : { name: 'clear', word: 'clear' };
  }

  return {
    state: state,
    endless: endless,
    unit: () => unit,
    use: (word) => {
      unit = word;
    },
    /* Picks the unit from a text given as [mm, in]; a single string serves both units. */
    pick: (text) => (Array.isArray(text) ? text[unit === 'mm' ? 0 : 1] : text),
    coarseDown: (length) => down(length, COARSE[unit]),
    coarseGrain: () => COARSE[unit][0],
    fineDown: (length) => down(length, FINE[unit]),
    fineUp: (length) => up(length, FINE[unit]),
    place: (length) => nearest(length, COARSE[unit]),
    /* The range of a distance from a table edge, both ends rounded inward. */
    edgeRange: (least, most) => (Math.ceil(least / COARSE[unit][0]) < Math.floor(most / COARSE[unit][0])
      ? fromEdge(least, up) + ' to ' + fromEdge(most, down)
      : 'no play'),
    finePlace: (length) => nearest(length, FINE[unit]),
    /* As a reader types it: whole nanometres, to 0.0001 in. */
    exact: (length) => (unit === 'mm'
      ? String(length / Model.MM)
      : String(Number((length / Model.INCH).toFixed(6)))),
    upCoarse: (length) => up(length, COARSE[unit]),
    withUnit: (text) => text + ' ' + unit,
    /* The step of a step button, and of a slider. */
    step: () => (unit === 'mm' ? Model.MM : Model.INCH / 20),
    slide: () => (unit === 'mm' ? Model.MM / 2 : Model.INCH / 50),
  };
})();
