/*
 * What the tables let a gap be that is measured on the machine: at one place and opening, the axes
 * where they bring part and guard nearest. Exact: lengths are BigInt multiples of 1 / `over`
 * half-nanometres; null where there is no end.
 */
const Found = (() => {
  const AGREES = 'agrees';
  const CLOSER = 'closer';
  const FARTHER = 'farther';

  const reading = (thing, name) => Suppose.readings(thing).find((one) => one.name === name);
  const written = (range) => (range[0] !== null ? range[0] : range[1] !== null ? range[1] : 0);

  /* One end: nearest to the other side (at worst), farthest, and with every reading as written. */
  function end(far, thing, coordinate, index, moves) {
    const found = { near: coordinate, off: coordinate, written: coordinate };
    (moves || []).filter((move) => move[1] === index).forEach(([name, , halves]) => {
      const range = reading(thing, name).range;
      const bounds = Suppose.bounds(far, reading(thing, name));
      const high = (index % 2 === 1) === (halves > 0);
      const [worst, best] = high ? [1, 0] : [0, 1];
      const by = (value) => (halves * (value - bounds[worst])) / 2;
      found.near = range[worst] === null ? null : found.near;
      found.off = found.off === null || range[best] === null ? null : found.off + by(bounds[best]);
      found.written += by(written(range));
    });
    return found;
  }

  /* The same over a divisor, at a share of the way from one end to another. */
  function between(one, other, from, over) {
    const mix = {};
    ['near', 'off', 'written'].forEach((key) => {
      const parts = [[one[key], over - from], [other[key], from]].filter((part) => part[1] !== 0);
      mix[key] = parts.some((part) => part[0] === null)
        ? null
        : parts.reduce((sum, part) => sum + BigInt(part[0]) * BigInt(part[1]), BigInt(0));
    });
    return mix;
  }

  /* The end of a part on one axis of the table frame, seen from the vise's origin. */
  function partEnd(data, vise, part, at, axis, high, over) {
    const turn = Model.TURNS[at.turn];
    const own = axis === 'z' ? 'w' : turn.u[0] === axis ? 'u' : 'v';
    const sign = own === 'w' ? 1 : turn[own][1];
    const index = high === (sign > 0) ? 1 : 0;
    const ends = part.u.concat(part.v, part.w);
    const one = (first) => end(data.far, vise, ends[first + index], first + index, part.moves);
    const found = own === 'u'
      ? between(one(0), one(2), over === 1 ? 0 : at.opening - vise.opening[0], over)
      : between(one(own === 'v' ? 4 : 6), one(own === 'v' ? 4 : 6), 0, over);
    const origin = axis === 'z' ? BigInt(0) : BigInt(at[axis]) * BigInt(over);
    Object.keys(found).forEach((key) => {
      found[key] = found[key] === null ? null : found[key] * BigInt(sign) + origin;
    });
    return found;
  }

  /* Which height of the nose a face follows, decided by the readings as written. */
  function nose(data, machine, vise, at, high) {
    const highest = { near: high ? machine.nose[2] : machine.nose[1],
      off: high ? machine.nose[1] : machine.nose[2], written: machine.nose[1] };
    if (at.situation === Model.LOADING || high) {
      return highest;
    }
    const touching = vise.bed + data.shortestTool;
    const open = reading(machine, 'nose_min');
    const lowest = machine.nose[0] >= touching
      ? { near: machine.nose[0], off: open === undefined ? machine.nose[0] : open.range[1], written: machine.nose[0] }
      : { near: touching, off: touching, written: touching };
    return lowest.written <= highest.written ? lowest : highest;
  }

  /* A face of a guard swept in the situation; null if it is without end that way. */
  function face(data, machine, vise, guard, at, axis, high, over) {
    const coordinate = guard[axis][high ? 1 : 0];
    if (coordinate === null) {
      return null;
    }
    let found;
    if (axis === 'z') {
      const height = guard.withNose ? nose(data, machine, vise, at, high) : { near: 0, off: 0, written: 0 };
      found = {};
      Object.keys(height).forEach((key) => {
        found[key] = height[key] === null || Math.abs(height[key]) >= data.far ? null : height[key] + coordinate;
      });
    } else {
      const index = (axis === 'x' ? 0 : 2) + (high ? 1 : 0);
      found = end(data.far, machine, coordinate, index, guard.moves);
      const which = axis === 'x' ? 0 : 1;
      const travel = high ? machine.reach[which] : -machine.reach[which];
      const shift = !(axis === 'x' ? guard.movesX : guard.movesY) ? 0
        : at.situation === Model.CUTTING ? travel : machine.load[which] - machine.spindle[which];
      Object.keys(found).forEach((key) => {
        found[key] = found[key] === null ? null : found[key] + shift;
      });
    }
    return between(found, found, 0, over);
  }

  const minus = (one, other) => (one === null || other === null ? null : one - other);

  function along(data, machine, vise, part, guard, at, axis, over) {
    let best = null;
    for (const beyond of [true, false]) {
      const wall = face(data, machine, vise, guard, at, axis, !beyond, over);
      if (wall !== null) {
        const edge = partEnd(data, vise, part, at, axis, beyond, over);
        const gap = {};
        Object.keys(edge).forEach((key) => {
          gap[key] = beyond ? minus(wall[key], edge[key]) : minus(edge[key], wall[key]);
        });
        if (best === null || gap.written > best.written) {
          best = gap;
        }
      }
    }
    return best === null ? null : Object.assign(best, { tolerance: guard.tolerance + part.tolerance });
  }

  /*
   * Every gap that agrees with the tables, for a check whose measures are off by `tolerance` each:
   * { least, most, over }; null where part and guard are nowhere beside each other. `at` has turn, x,
   * y, situation and opening; `named` lists the parts of the name that is checked.
   */
  function expected(data, machine, vise, named, guard, at, axis, tolerance) {
    const over = Math.max(1, vise.opening[1] - vise.opening[0]);
    let nearest = null;
    named.forEach((part) => {
      const gap = along(data, machine, vise, part, guard, at, axis, over);
      if (gap !== null && (nearest === null || gap.written < nearest.written)) {
        nearest = gap;
      }
    });
    if (nearest === null) {
      return null;
    }
    const slack = BigInt(nearest.tolerance + tolerance * (axis === 'z' ? 1 : 2)) * BigInt(over);
    return {
      least: nearest.near === null ? null : nearest.near - slack,
      most: nearest.off === null ? null : nearest.off + slack,
      over: BigInt(over),
    };
  }

  /* What a gap found says, and by how much it lies outside, rounded up. */
  function says(range, found) {
    const scaled = BigInt(found) * range.over;
    const up = (length) => Number((length + range.over - BigInt(1)) / range.over);
    if (range.least !== null && scaled < range.least) {
      return { word: CLOSER, by: up(range.least - scaled) };
    }
    return range.most !== null && scaled > range.most
      ? { word: FARTHER, by: up(scaled - range.most) }
      : { word: AGREES, by: 0 };
  }

  /* Floor of a quotient, for display. */
  const floor = (length, over) => Number(length >= 0 ? length / over : -((-length + over - BigInt(1)) / over));

  return { expected: expected, says: says, floor: floor };
})();
