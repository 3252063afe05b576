/* Maps lengths to pixels: the extent of a drawing, and free space for its labels. */
const Scene = (() => {
  const LETTER = 6.4;
  const LINE = 14;

  /*
   * A view of across × up (lengths; up is up on the screen) with a given width in pixels; if the
   * height limits the scale, it shows more to the sides.
   */
  function frame(across, up, width, tallest) {
    const scale = Math.min(width / (across[1] - across[0]), tallest / (up[1] - up[0]));
    const idle = width / scale - (across[1] - across[0]);
    const left = across[0] - idle / 2;
    const height = (up[1] - up[0]) * scale;
    return {
      width: width,
      height: height,
      scale: scale,
      across: [left, left + width / scale],
      up: up,
      h: (length) => (length - left) * scale,
      v: (length) => (up[1] - length) * scale,
    };
  }

  function cut(interval, view) {
    return [Math.max(interval[0], view[0]), Math.min(interval[1], view[1])];
  }

  /* The visible part of a box as a rectangle in pixels; null if nothing is visible. */
  function rectangle(frame, across, up) {
    const h = cut(across, frame.across);
    const v = cut(up, frame.up);
    if (h[0] > h[1] || v[0] > v[1]) {
      return null;
    }
    return {
      x: frame.h(h[0]),
      y: frame.v(v[1]),
      width: (h[1] - h[0]) * frame.scale,
      height: (v[1] - v[0]) * frame.scale,
    };
  }

  const meet = (one, other) => one.x < other.x + other.width && other.x < one.x + one.width
    && one.y < other.y + other.height && other.y < one.y + one.height;

  /* Allocates space for labels, so that none overlaps another. */
  function labels(frame) {
    const taken = [];
    const inside = (room) => room.x >= 0 && room.y >= 0
      && room.x + room.width <= frame.width && room.y + room.height <= frame.height;
    const box = (text, middle, letter) => {
      const width = text.length * (letter || LETTER) + 6;
      return { x: middle[0] - width / 2, y: middle[1] - LINE / 2, width: width, height: LINE };
    };
    return {
      keep: (room) => taken.push(room),
      /*
       * The first of the centre points with free space, within `within` if given; null if there is
       * none.
       */
      find: (text, middles, within, letter) => {
        for (const middle of middles) {
          const room = box(text, middle, letter);
          const fits = within === null || (room.width <= within.width && room.height <= within.height
            && room.x >= within.x && room.x + room.width <= within.x + within.width
            && room.y >= within.y && room.y + room.height <= within.y + within.height);
          if (fits && inside(room) && taken.every((other) => !meet(room, other))) {
            taken.push(room);
            return middle;
          }
        }
        return null;
      },
    };
  }

  /* A few points of a rectangle, its centre first. */
  function spread(rectangle) {
    const points = [];
    for (const down of [0.5, 0.25, 0.75, 0.1, 0.9]) {
      for (const over of [0.5, 0.25, 0.75, 0.12, 0.88]) {
        points.push([rectangle.x + rectangle.width * over, rectangle.y + rectangle.height * down]);
      }
    }
    return points;
  }

  const hull = Model.hull;
  const grown = (interval, by) => [interval[0] - by, interval[1] + by];

  /* Everything that the vise covers over its whole opening range. */
  function viseHull(ctx) {
    const boxes = [];
    for (const opening of ctx.vise.opening) {
      const at = Object.assign({}, ctx.state, { opening: opening });
      Model.partsOf(ctx.vise, ctx.state).forEach((part) => boxes.push(Model.partBox(ctx.vise, part, at)));
    }
    return boxes.reduce((all, box) => ({
      x: hull(all.x, box.x), y: hull(all.y, box.y), z: hull(all.z, box.z),
    }));
  }

  const table = (machine) => ({
    x: [-machine.table[0] / 2, machine.table[0] / 2],
    y: [-machine.table[1] / 2, machine.table[1] / 2],
  });

  /* The near faces of guards unbounded beyond them, at their nearest while cutting. */
  function faces(machine, axis) {
    const other = axis === 'x' ? 'y' : 'x';
    const index = axis === 'x' ? 0 : 1;
    const found = [];
    machine.guards.forEach((guard) => {
      const moves = axis === 'x' ? guard.movesX : guard.movesY;
      const shift = moves ? machine.reach[index] : 0;
      const endless = guard[other][0] === null && guard[other][1] === null;
      if (endless && guard[axis][0] === null && guard[axis][1] !== null) {
        found.push(guard[axis][1] + shift);
      }
      if (endless && guard[axis][1] === null && guard[axis][0] !== null) {
        found.push(guard[axis][0] - shift);
      }
    });
    return found;
  }

  /* The table, the vise and the faces around them; zoomed in, the vise and what is next to it. */
  function planExtent(ctx) {
    const vise = viseHull(ctx);
    if (ctx.zoom === 'near') {
      const around = 90 * Model.MM;
      return { x: grown(vise.x, around), y: grown(vise.y, around) };
    }
    const extent = { x: hull(table(ctx.machine).x, vise.x), y: hull(table(ctx.machine).y, vise.y) };
    const farthest = { x: ctx.machine.table[0] / 4, y: ctx.machine.table[1] / 2 };
    for (const axis of ['x', 'y']) {
      const least = extent[axis][0] - farthest[axis];
      const most = extent[axis][1] + farthest[axis];
      faces(ctx.machine, axis).forEach((face) => {
        extent[axis] = hull(extent[axis], [Math.max(least, face), Math.min(most, face)]);
      });
      extent[axis] = grown(extent[axis], 45 * Model.MM);
    }
    return extent;
  }

  return {
    frame: frame,
    rectangle: rectangle,
    cut: cut,
    labels: labels,
    spread: spread,
    viseHull: viseHull,
    table: table,
    planExtent: planExtent,
    grown: grown,
    meet: meet,
  };
})();
