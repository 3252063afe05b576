/* Lengths and verdicts in words, in the unit the reader chose; every rounding is toward less clearance. */
const Words = (() => {
  /* Half-nanometres in the last digit shown, and how many digits there are. */
  const COARSE = { mm: [Model.MM / 10, 1], in: [Model.INCH / 100, 2] };
  const FINE = { mm: [Model.MM / 100, 2], in: [Model.INCH / 1000, 3] };
  const JUST = 2 * Model.MM;
  let unit = 'mm';

  function digits(count, decimals) {
    const text = String(Math.abs(count)).padStart(decimals + 1, '0');
    const cut = text.length - decimals;
    return (count < 0 ? '−' : '') + text.slice(0, cut) + '.' + text.slice(cut);
  }

  const down = (length, grain) => digits(Math.floor(length / grain[0]), grain[1]);
  const up = (length, grain) => digits(Math.ceil(length / grain[0]), grain[1]);
  const nearest = (length, grain) => digits(Math.floor((length + grain[0] / 2) / grain[0]), grain[1]);

  /* What is hit, too close, just clear or clear: name for the style, word for people. */
  function state(pair) {
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
    unit: () => unit,
    use: (word) => {
      unit = word;
    },
    /* Text told in both units as [mm, in], or alike as one string. */
    pick: (told) => (Array.isArray(told) ? told[unit === 'mm' ? 0 : 1] : told),
    coarseDown: (length) => down(length, COARSE[unit]),
    coarseGrain: () => COARSE[unit][0],
    fineDown: (length) => down(length, FINE[unit]),
    fineUp: (length) => up(length, FINE[unit]),
    place: (length) => nearest(length, COARSE[unit]),
    finePlace: (length) => nearest(length, FINE[unit]),
    upCoarse: (length) => up(length, COARSE[unit]),
    withUnit: (text) => text + ' ' + unit,
    /* What one press of a step button moves, and one step of a slider. */
    step: () => (unit === 'mm' ? Model.MM : Model.INCH / 20),
    slide: () => (unit === 'mm' ? Model.MM / 2 : Model.INCH / 50),
  };
})();
