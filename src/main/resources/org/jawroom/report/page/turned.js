/*
 * What stands turned on a swivel base, as it is drawn: one body a part, with its true outline over
 * the strips that cover it. Gaps are those of the strips; what is drawn decides nothing.
 */
const Turned = (() => {
  /*
   * By how much a side is drawn outside of the true one, in pixels: a corner is printed to 0.01, so
   * at most 0.0071 off, and the line printed is nowhere inside.
   */
  const OUT = 0.01;

  /* The parts at one moment, those that are strips of the same turned part as one. */
  function bodies(vise, state, parts) {
    const found = new Map();
    parts.forEach((part, index) => {
      const box = Model.partBox(vise, part, state);
      const whole = part.strip === undefined;
      const key = whole ? index : part.name + '\n' + part.strip;
      const body = found.get(key);
      if (body === undefined) {
        found.set(key, {
          part: part,
          box: box,
          strips: whole ? [] : [box],
          outline: whole ? null : vise.outlines[part.strip].map((corner) => Model.placed(corner, state)),
        });
      } else {
        body.box = Model.joined(body.box, box);
        body.strips.push(box);
      }
    });
    return Array.from(found.values());
  }

  /* From one point away to another, OUT long; nothing between equal points. */
  function away(from, to) {
    const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return far === 0 ? [0, 0] : [(to[0] - from[0]) / far * OUT, (to[1] - from[1]) / far * OUT];
  }

  /* The corners of an outline in pixels, in order, each moved outward along both sides. */
  function corners(frame, outline) {
    const at = outline.map((corner) => [frame.h(corner.x), frame.v(corner.y)]);
    return at.map((corner, index) => {
      const one = away(at[(index + 1) % at.length], corner);
      const other = away(at[(index + at.length - 1) % at.length], corner);
      return [corner[0] + one[0] + other[0], corner[1] + one[1] + other[1]];
    });
  }

  const points = (polygon) => polygon.map((corner) => corner.map((one) => one.toFixed(2)).join(',')).join(' ');

  /* Rectangles in pixels as one path. */
  const path = (rectangles) => rectangles.map((one) => 'M' + one.x.toFixed(2) + ',' + one.y.toFixed(2)
    + 'h' + one.width.toFixed(2) + 'v' + one.height.toFixed(2) + 'h' + (-one.width).toFixed(2) + 'z').join('');

  /* Whether a point is within a convex polygon, whichever way round its corners go. */
  function within(polygon, point) {
    const sides = polygon.map((from, index) => {
      const to = polygon[(index + 1) % polygon.length];
      return (to[0] - from[0]) * (point[1] - from[1]) - (to[1] - from[1]) * (point[0] - from[0]);
    });
    return sides.every((side) => side >= 0) || sides.every((side) => side <= 0);
  }

  const ends = (box) => [[box.x, box.y], [box.x + box.width, box.y], [box.x, box.y + box.height],
    [box.x + box.width, box.y + box.height]];

  return {
    bodies: bodies,
    corners: corners,
    points: points,
    path: path,
    /* Whether a small rectangle lies within a polygon, or is touched by it. */
    holds: (polygon, box) => ends(box).every((end) => within(polygon, end)),
    touches: (polygon, box) => ends(box).some((end) => within(polygon, end)),
  };
})();
