/*
 * Values supposed for readings known within bounds. Every end of a part and every face of a guard is
 * a sum of readings with fixed signs, and the data have it at worst; a supposed value moves it from
 * there, exactly. `values` maps names of readings to lengths; other readings stay at worst.
 */
const Suppose = (() => {
  const readings = (thing) => thing.open || [];

  /* The bounds of a reading as the data at worst have them; where there is no end, very far off. */
  const bounds = (far, reading) => [
    reading.range[0] === null ? -far : reading.range[0],
    reading.range[1] === null ? far : reading.range[1],
  ];

  /* The value of a reading that reaches farthest with an end: with a low end the least coordinate. */
  function worst(far, reading, end, halves) {
    const [least, most] = bounds(far, reading);
    return (end % 2 === 1) === (halves > 0) ? most : least;
  }

  const named = (thing, name) => readings(thing).find((reading) => reading.name === name);

  /* The ends after the moves that supposed values make. */
  function moved(far, thing, ends, moves, values) {
    const result = ends.slice();
    (moves || []).forEach(([name, end, halves]) => {
      if (values[name] !== undefined) {
        result[end] += (halves * (values[name] - worst(far, named(thing, name), end, halves))) / 2;
      }
    });
    return result;
  }

  function part(far, vise, one, values) {
    const ends = moved(far, vise, one.u.concat(one.v, one.w), one.moves, values);
    return Object.assign({}, one, { u: ends.slice(0, 4), v: ends.slice(4, 6), w: ends.slice(6, 8) });
  }

  /* The vise with values supposed. */
  function vise(far, one, values) {
    if (Object.keys(values).length === 0) {
      return one;
    }
    const parts = (list) => list.map((each) => part(far, one, each, values));
    const bolts = {};
    Object.keys(one.bolts).forEach((thread) => {
      bolts[thread] = {};
      Object.keys(one.bolts[thread]).forEach((mount) => {
        bolts[thread][mount] = parts(one.bolts[thread][mount]);
      });
    });
    return Object.assign({}, one, { parts: parts(one.parts), bolts: bolts });
  }

  /* The machine with values supposed: faces of guards, and the heights of the nose. */
  function machine(far, one, values) {
    if (Object.keys(values).length === 0) {
      return one;
    }
    const guards = one.guards.map((guard) => {
      const ends = moved(far, one, guard.x.concat(guard.y), guard.moves, values);
      return Object.assign({}, guard, { x: ends.slice(0, 2), y: ends.slice(2, 4) });
    });
    const nose = one.nose.slice();
    if (values.nose_min !== undefined) {
      nose[0] = values.nose_min;
    }
    if (values.nose_max !== undefined) {
      nose[1] = values.nose_max;
      nose[2] = values.nose_max;
    }
    return Object.assign({}, one, { guards: guards, nose: nose });
  }

  return { readings: readings, bounds: bounds, vise: vise, machine: machine };
})();
