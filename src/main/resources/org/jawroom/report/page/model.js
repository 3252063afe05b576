/*
 * The gaps at one moment, computed from the same whole half-nanometres as the solver's and by the
 * same rules. A length is an integral Number, far below 2^53, so that sums are exact; an unbounded
 * limit is ±Infinity.
 */
const Model = (() => {
  const CUTTING = 1;
  const LOADING = 2;
  const MM = 2000000;
  const INCH = 50800000;

  /* The directions of the vise's u and v in the table frame: [axis, sign]. */
  const TURNS = {
    front: { u: ['y', -1], v: ['x', 1] },
    right: { u: ['x', 1], v: ['y', 1] },
    rear: { u: ['y', 1], v: ['x', -1] },
    left: { u: ['x', -1], v: ['y', -1] },
  };

  const ends = (pair) => [
    pair[0] === null ? -Infinity : pair[0],
    pair[1] === null ? Infinity : pair[1],
  ];
  const plus = (pair, shift) => [pair[0] + shift, pair[1] + shift];
  const signed = (pair, sign) => (sign > 0 ? pair : [0 - pair[1], 0 - pair[0]]);
  const distance = (one, other) => Math.max(other[0] - one[1], one[0] - other[1]);

  /* change · from / length, rounded down or up; the product exceeds the exact range of a Number. */
  function share(change, from, length, up) {
    if (change === 0 || from === 0) {
      return 0;
    }
    if (from === length) {
      return change;
    }
    const product = BigInt(up ? -change : change) * BigInt(from);
    const divisor = BigInt(length);
    let floor = product / divisor;
    if (product % divisor < 0) {
      floor -= BigInt(1);
    }
    return Number(up ? -floor : floor);
  }

  /* A part's ends along u at one opening: the low one rounded down, the high one up. */
  function along(part, range, opening) {
    const [closedLo, closedHi, openLo, openHi] = part.u;
    const from = opening - range[0];
    const length = range[1] - range[0];
    return [
      closedLo + share(openLo - closedLo, from, length, false),
      closedHi + share(openHi - closedHi, from, length, true),
    ];
  }

  /* A part's box in the table frame. */
  function partBox(vise, part, state) {
    const turn = TURNS[state.turn];
    const box = { z: part.w };
    const u = along(part, vise.opening, state.opening);
    box[turn.u[0]] = signed(u, turn.u[1]);
    box[turn.v[0]] = signed(part.v, turn.v[1]);
    return { x: plus(box.x, state.x), y: plus(box.y, state.y), z: box.z };
  }

  /* A point of the vise frame, [u, v], in the table frame. */
  function placed(point, state) {
    const turn = TURNS[state.turn];
    const at = {};
    at[turn.u[0]] = turn.u[1] * point[0] + state[turn.u[0]];
    at[turn.v[0]] = turn.v[1] * point[1] + state[turn.v[0]];
    return at;
  }

  /* The range of the nose's height over the table, at worst of what its readings allow. */
  function nose(data, machine, vise, situation) {
    if (situation === LOADING) {
      return [machine.nose[1], machine.nose[2]];
    }
    const lowest = Math.max(machine.nose[0], vise.bed + data.shortestTool);
    return [Math.min(lowest, machine.nose[1]), machine.nose[2]];
  }

  /* A guard's box with the spindle at (state.spindleX, state.spindleY), as it sweeps along z. */
  function guardBox(data, machine, vise, guard, state) {
    const alongX = guard.movesX ? state.spindleX - machine.spindle[0] : 0;
    const alongY = guard.movesY ? state.spindleY - machine.spindle[1] : 0;
    let z = ends(guard.z);
    if (guard.withNose) {
      const heights = nose(data, machine, vise, state.situation);
      z = [z[0] + heights[0], z[1] + heights[1]];
    }
    return { x: plus(ends(guard.x), alongX), y: plus(ends(guard.y), alongY), z: z };
  }

  const hull = (one, other) => [Math.min(one[0], other[0]), Math.max(one[1], other[1])];
  const joined = (one, other) => ({
    x: hull(one.x, other.x), y: hull(one.y, other.y), z: hull(one.z, other.z),
  });

  /* Everything a guard sweeps in the state's situation; at the load position it stands still. */
  function guardSwept(data, machine, vise, guard, state) {
    const at = (sign) => guardBox(data, machine, vise, guard, inSituation(machine, Object.assign({}, state, {
      spindleX: machine.spindle[0] + sign * machine.reach[0],
      spindleY: machine.spindle[1] + sign * machine.reach[1],
    })));
    return joined(at(-1), at(1));
  }

  /* Everything a part covers while the jaws move over a range of openings. */
  function partSwept(vise, part, state, openings) {
    const at = (opening) => partBox(vise, part, Object.assign({}, state, { opening: opening }));
    return joined(at(openings[0]), at(openings[1]));
  }

  const counts = (thing, situation) => (thing.when & situation) !== 0;

  /*
   * The table is an obstacle for the handle only while loading, and for parts that reach below its
   * top.
   */
  function meets(part, guard, situation) {
    if (!guard.table) {
      return true;
    }
    return part.handle ? situation === LOADING : part.w[0] < 0;
  }

  function partsOf(vise, state) {
    return vise.parts.concat(vise.bolts[state.thread][state.mount]);
  }

  function pair(part, guard, box, other, state) {
    const gaps = { x: distance(box.x, other.x), y: distance(box.y, other.y), z: distance(box.z, other.z) };
    const gap = Math.max(gaps.x, gaps.y, gaps.z);
    const required = part.handle && state.situation === LOADING
      ? Math.max(guard.clearance, state.hand)
      : guard.clearance;
    const tolerance = guard.tolerance + part.tolerance;
    return {
      part: part,
      guard: guard,
      situation: state.situation,
      partBox: box,
      guardBox: other,
      gap: gap,
      beside: Math.max(gaps.x, gaps.y),
      above: gaps.z,
      axis: gaps.y === gap ? 'y' : gaps.x === gap ? 'x' : 'z',
      required: required,
      tolerance: tolerance,
      margin: gap - required - tolerance,
    };
  }

  /* Every pair that counts in the situation, guards and parts in the solver's order. */
  function pairs(machine, vise, state, each) {
    for (const guard of machine.guards) {
      if (counts(guard, state.situation)) {
        for (const part of partsOf(vise, state)) {
          if (counts(part, state.situation) && meets(part, guard, state.situation)) {
            each(part, guard);
          }
        }
      }
    }
  }

  const tightestFirst = (one, next) => one.margin - next.margin;

  /*
   * Every pair that counts, tightest first, equal ones in the solver's order. The state has turn,
   * mount, thread, x, y (the vise), situation, spindleX, spindleY (over the table), opening, and
   * hand: the least room asked for round the handle while loading.
   */
  function gaps(data, machine, vise, state) {
    const found = [];
    pairs(machine, vise, state, (part, guard) => found.push(pair(
      part, guard, partBox(vise, part, state), guardBox(data, machine, vise, guard, state), state)));
    return found.sort(tightestFirst).filter(tightestStrip());
  }

  /* Of the strips that cover one turned part the tightest alone, at each guard. */
  function tightestStrip() {
    const seen = new Set();
    return (gap) => {
      const pair = gap.part.name + '\n' + gap.guard.name;
      const again = gap.part.strip !== undefined && seen.has(pair);
      seen.add(pair);
      return !again;
    };
  }

  /*
   * The same over the whole travel, loading included, and a range of openings: the solver's
   * margins.
   */
  function sweptGaps(data, machine, vise, state, openings) {
    const found = [];
    for (const situation of [CUTTING, LOADING]) {
      const at = Object.assign({}, state, { situation: situation });
      pairs(machine, vise, at, (part, guard) => found.push(pair(
        part, guard, partSwept(vise, part, at, openings), guardSwept(data, machine, vise, guard, at), at)));
    }
    return found.sort(tightestFirst);
  }

  /*
   * Whether the vise can be tapped square where it stands: its bolts or clamps leave the room for
   * it, and nothing comes too near on the way. `swept`: what sweptGaps returned.
   */
  function settable(data, seat, state, swept) {
    const held = data.tapRoom === 0 || seat.settable.some((place) => place.x[0] <= state.x
      && state.x <= place.x[1] && place.y[0] <= state.y && state.y <= place.y[1]);
    return held && swept.every((one) =>
      Math.max(one.beside - data.tapRoom, one.above) >= one.required + one.tolerance);
  }

  /* How far the work area, jaws wide open, sticks out of the spindle's reach; 0 if it does not. */
  function shortfall(machine, vise, state) {
    const turn = TURNS[state.turn];
    const area = {};
    area[turn.u[0]] = signed(vise.work.slice(0, 2), turn.u[1]);
    area[turn.v[0]] = signed(vise.work.slice(2, 4), turn.v[1]);
    const beyond = (axis, index) => {
      const [lo, hi] = plus(area[axis], state[axis]);
      const least = machine.spindle[index] - machine.reach[index];
      const most = machine.spindle[index] + machine.reach[index];
      return Math.max(least - lo, hi - most);
    };
    return Math.max(0, beyond('x', 0), beyond('y', 1));
  }

  /* While loading the axes stand at the load position. */
  function inSituation(machine, state) {
    return state.situation === LOADING
      ? Object.assign({}, state, { spindleX: machine.load[0], spindleY: machine.load[1] })
      : state;
  }

  const middle = (interval) => (interval[0] + interval[1]) / 2;
  const clamped = (value, least, most) => Math.round(Math.max(least, Math.min(most, value)));

  /*
   * The spindle positions along one axis that can bring a guard nearest to a part: the ends, or
   * centre to centre; mid-travel comes first, so that it wins ties.
   */
  function spots(centre, reach, part, guard) {
    const spots = [centre, centre - reach, centre + reach];
    const shift = middle(part) - middle(guard);
    if (Number.isFinite(shift)) {
      spots.push(centre + clamped(shift, -reach, reach));
    }
    return spots;
  }

  /* The openings that can bring a part nearest to a guard: the ends, or centre to centre. */
  function openingsFor(vise, part, guard, state, openings) {
    const axis = TURNS[state.turn].u[0];
    const at = (s) => middle(partBox(vise, part, Object.assign({}, state, { opening: s }))[axis]);
    const from = at(openings[0]);
    const to = at(openings[1]);
    const goal = middle(guard[axis]);
    if (from === to || !Number.isFinite(goal)) {
      return openings;
    }
    const between = openings[0] + ((goal - from) / (to - from)) * (openings[1] - openings[0]);
    return openings.concat(clamped(between, openings[0], openings[1]));
  }

  /*
   * The moment with the least margin within a range of openings, with the vise placed as in the
   * state.
   */
  function tightest(data, machine, vise, state, openings) {
    let found = null;
    const look = (moment, part, guard) => {
      const margin = pair(
        part, guard, partBox(vise, part, moment), guardBox(data, machine, vise, guard, moment),
        moment).margin;
      if (found === null || margin < found.margin) {
        found = { margin: margin, state: moment };
      }
    };
    for (const situation of [CUTTING, LOADING]) {
      const middleState = inSituation(machine, Object.assign({}, state, {
        situation: situation,
        spindleX: machine.spindle[0],
        spindleY: machine.spindle[1],
        opening: openings[0],
      }));
      pairs(machine, vise, middleState, (part, guard) => {
        moments(data, machine, vise, middleState, part, guard, openings)
          .forEach((moment) => look(moment, part, guard));
      });
    }
    return found === null ? null : found.state;
  }

  function moments(data, machine, vise, state, part, guard, openings) {
    const found = [];
    for (const opening of openings) {
      const at = Object.assign({}, state, { opening: opening });
      const box = partBox(vise, part, at);
      const other = guardBox(data, machine, vise, guard, at);
      const still = state.situation === LOADING;
      const xs = still ? [at.spindleX] : spots(machine.spindle[0], machine.reach[0], box.x, other.x);
      const ys = still ? [at.spindleY] : spots(machine.spindle[1], machine.reach[1], box.y, other.y);
      for (const x of xs) {
        for (const y of ys) {
          const moved = Object.assign({}, at, { spindleX: x, spindleY: y });
          const there = guardBox(data, machine, vise, guard, moved);
          for (const s of openingsFor(vise, part, there, moved, openings)) {
            found.push(Object.assign({}, moved, { opening: s }));
          }
        }
      }
    }
    return found;
  }

  /* Decodes the turn, mount, thread and places of a seat from the data. */
  function seat(seatData) {
    const [turn, mount, thread, count] = seatData;
    const places = [];
    for (let i = 4; i < seatData.length; i += 4) {
      places.push({ x: [seatData[i], seatData[i + 1]], y: [seatData[i + 2], seatData[i + 3]] });
    }
    return {
      turn: turn, mount: mount, thread: thread, places: places.slice(0, count), settable: places.slice(count),
    };
  }

  /* The place nearest to (x, y), of those listed. */
  function nearestPlace(places, x, y) {
    let best = null;
    places.forEach((place, index) => {
      const at = [clamped(x, place.x[0], place.x[1]), clamped(y, place.y[0], place.y[1])];
      const off = Math.hypot(at[0] - x, at[1] - y);
      if (best === null || off < best.off) {
        best = { x: at[0], y: at[1], index: index, off: off };
      }
    });
    return best;
  }

  /* The slot of each bolt, counted from 1: of two within reach the nearer, then the lower. */
  function slots(machine, vise, state) {
    const across = machine.along === 'x' ? 'y' : 'x';
    return vise.bolts[state.thread][state.mount]
      .filter((bolt) => counts(bolt, CUTTING))
      .map((bolt) => {
        const at = middle(partBox(vise, bolt, state)[across]);
        let nearest = 0;
        machine.slots.forEach((slot, j) => {
          if (Math.abs(slot - at) < Math.abs(machine.slots[nearest] - at)) {
            nearest = j;
          }
        });
        return nearest + 1;
      });
  }

  return {
    CUTTING: CUTTING,
    LOADING: LOADING,
    MM: MM,
    INCH: INCH,
    TURNS: TURNS,
    gaps: gaps,
    sweptGaps: sweptGaps,
    settable: settable,
    shortfall: shortfall,
    guardSwept: guardSwept,
    hull: hull,
    joined: joined,
    placed: placed,
    guardBox: guardBox,
    partBox: partBox,
    partsOf: partsOf,
    counts: counts,
    inSituation: inSituation,
    tightest: tightest,
    seat: seat,
    nearestPlace: nearestPlace,
    slots: slots,
  };
})();
