/*
 * Draws one moment: the plan from above, the operator at the bottom, and the side view from the
 * right.
 */
const Drawing = (() => {
  const NUMBERS = ['①', '②', '③'];

  const shape = (rectangle, attributes, title) => {
    const made = Dom.draw('rect', Object.assign({
      x: rectangle.x.toFixed(2),
      y: rectangle.y.toFixed(2),
      width: Math.max(0.5, rectangle.width).toFixed(2),
      height: Math.max(0.5, rectangle.height).toFixed(2),
    }, attributes));
    if (title !== undefined) {
      made.append(Dom.draw('title', {}, title));
    }
    return made;
  };
  const line = (x1, y1, x2, y2, name) => Dom.draw('line', {
    x1: x1.toFixed(2), y1: y1.toFixed(2), x2: x2.toFixed(2), y2: y2.toFixed(2), class: name,
  });
  const text = (middle, words, name) => Dom.draw('text', {
    x: middle[0].toFixed(1), y: (middle[1] + 4).toFixed(1), class: name, 'text-anchor': 'middle',
  }, words);

  /* Hatches for guards, and arrowheads; `name` keeps the ids of two drawings distinct. */
  function patterns(name) {
    return Dom.draw('defs', {},
      Dom.draw('pattern', {
        id: name + '-hatch', width: 7, height: 7, patternUnits: 'userSpaceOnUse',
        patternTransform: 'rotate(45)',
      }, Dom.draw('line', { x1: 0, y1: 0, x2: 0, y2: 7, class: 'hatch' })),
      Dom.draw('marker', {
        id: name + '-end', viewBox: '0 0 10 10', refX: 10, refY: 5, markerWidth: 9, markerHeight: 9,
        markerUnits: 'userSpaceOnUse', orient: 'auto-start-reverse',
      }, Dom.draw('path', { d: 'M0,1.5 L10,5 L0,8.5 z', class: 'arrow' })));
  }

  const slug = (part) => part.name.replace(/[^a-z]+/g, '-');
  const own = ['base', 'turned-body', 'fixed-jaw', 'moving-jaw', 'rear-jaw', 'front-jaw', 'screw-rear', 'screw-front',
    'handle', 'bolts', 'clamps'];

  function partClass(part) {
    const name = slug(part);
    return 'part ' + (own.includes(name) ? 'p-' + name : 'p-other');
  }

  /*
   * Higher parts are drawn over lower ones, but bolts over everything, since a setter looks for
   * them.
   */
  const height = (one) => (one.part.name === 'bolts' ? Infinity : one.box.z[1]);

  function standingParts(ctx) {
    const parts = Model.partsOf(ctx.vise, ctx.state)
      .filter((part) => Model.counts(part, ctx.state.situation));
    return Turned.bodies(ctx.vise, ctx.state, parts)
      .sort((one, next) => height(one) - height(next))
      .map((one) => Object.assign(one, {
        name: partClass(one.part), title: one.part.name, label: 'part-name',
      }));
  }

  function standingGuards(ctx) {
    return ctx.machine.guards
      .filter((guard) => Model.counts(guard, ctx.state.situation) && !guard.table)
      .map((guard) => ({
        guard: guard, box: Model.guardBox(ctx.data, ctx.machine, ctx.vise, guard, ctx.state),
      }));
  }

  function slots(ctx, frame, into, room) {
    const alongX = ctx.machine.along === 'x';
    // Only the bolts' thread depends on the width, so a machine may be drawn without one: as a thin
    // line.
    const half = (ctx.machine.slotWidth === null ? Model.MM : ctx.machine.slotWidth) / 2;
    ctx.machine.slots.forEach((centre, index) => {
      const across = [centre - half, centre + half];
      const reach = ctx.machine.slotReach;
      const seen = alongX
        ? Scene.rectangle(frame, reach, across)
        : Scene.rectangle(frame, across, reach);
      if (seen === null) {
        return;
      }
      into.append(shape(seen, { class: 'slot' }, 'slot ' + (index + 1)));
      const ends = alongX
        ? [[seen.x + 9, seen.y + seen.height / 2], [seen.x + seen.width - 9, seen.y + seen.height / 2]]
        : [[seen.x + seen.width / 2, seen.y + seen.height - 9], [seen.x + seen.width / 2, seen.y + 9]];
      const number = String(index + 1);
      const middle = room.find(number, ends, null);
      if (middle !== null) {
        into.append(text(middle, number, 'slot-number'));
      }
    });
  }

  /* Whether what is drawn at a body, a rectangle or a polygon in pixels, meets a rectangle. */
  const covers = (body, area) => (body.polygon === null
    ? Scene.meet(area, body.rectangle)
    : Turned.touches(body.polygon, area));

  /* The name of a body, where none of the others covers it. */
  function label(into, room, words, body, others, name) {
    const rectangle = body.rectangle;
    const width = words.length * 6.4 + 6;
    const free = Scene.spread(rectangle)
      .filter((point) => others.every((other) => !covers(
        other, { x: point[0] - 4, y: point[1] - 6, width: 8, height: 12 })))
      .filter((point) => body.polygon === null || Turned.holds(
        body.polygon, { x: point[0] - width / 2, y: point[1] - 7, width: width, height: 14 }));
    const middle = room.find(words, free, rectangle);
    if (middle !== null) {
      into.append(text(middle, words, name));
      return;
    }
    /* A tall narrow rectangle may have space for vertical text. */
    if (body.polygon !== null || rectangle.width < 14 || width > rectangle.height) {
      return;
    }
    const at = [rectangle.x + rectangle.width / 2, rectangle.y + rectangle.height / 2];
    const area = { x: at[0] - 7, y: at[1] - width / 2, width: 14, height: width };
    if (others.every((other) => !covers(other, area)) && room.find('', [at], null) !== null) {
      room.keep(area);
      into.append(Dom.draw('text', {
        class: name, 'text-anchor': 'middle',
        transform: 'translate(' + (at[0] + 4).toFixed(1) + ' ' + at[1].toFixed(1) + ') rotate(-90)',
      }, words));
    }
  }

  /* What is drawn of one body: of a turned part its outline over its strips. */
  function drawn(one, frame, across) {
    const thing = one.thing;
    if (one.polygon === null) {
      return [shape(one.rectangle, { class: thing.name }, thing.title)];
    }
    const strips = thing.strips.map((box) => Scene.rectangle(frame, box[across[0]], box[across[1]]));
    return [
      Dom.draw('path', { d: Turned.path(strips.filter((strip) => strip !== null)), class: thing.name + ' strips' }),
      Dom.draw('polygon', { points: Turned.points(one.polygon), class: thing.name },
        Dom.draw('title', {}, thing.title)),
    ];
  }

  /* Bodies with their names, higher ones drawn later; a name stands where nothing covers it. */
  function bodies(things, frame, across, into, room) {
    const seen = things
      .map((thing) => ({
        thing: thing,
        rectangle: Scene.rectangle(frame, thing.box[across[0]], thing.box[across[1]]),
        polygon: thing.outline ? Turned.corners(frame, thing.outline) : null,
      }))
      .filter((one) => one.rectangle !== null);
    seen.forEach((one) => into.append(...drawn(one, frame, across)));
    seen.forEach((one, index) => label(
      into, room, one.thing.title, one, seen.slice(index + 1), one.thing.label));
  }

  /* The gap between two intervals, from face to face. */
  function facing(part, guard) {
    return guard[0] - part[1] >= part[0] - guard[1] ? [part[1], guard[0]] : [guard[1], part[0]];
  }

  /*
   * A point common to two intervals; if there is none, the end of the first that is nearer to the
   * second.
   */
  function common(part, guard, view, share) {
    const both = Scene.cut(Scene.cut(part, guard), view);
    if (both[0] <= both[1]) {
      return both[0] + (both[1] - both[0]) * share;
    }
    return part[1] < guard[0] ? part[1] : part[0];
  }

  /* The nearest gaps as dimension lines with their numbers; `axes` names the axes across and up. */
  function dimensions(ctx, frame, axes, marker, into, room) {
    ctx.gaps.slice(0, 3).forEach((gap, index) => {
      if (!axes.includes(gap.axis) || Words.endless(gap.gap)) {
        return;
      }
      const state = Words.state(gap);
      const across = gap.axis === axes[0];
      const other = across ? axes[1] : axes[0];
      const [from, to] = facing(gap.partBox[gap.axis], gap.guardBox[gap.axis]);
      const view = across ? frame.up : frame.across;
      const at = common(gap.partBox[other], gap.guardBox[other], view, [0.5, 0.28, 0.72][index]);
      const ends = across
        ? [[frame.h(from), frame.v(at)], [frame.h(to), frame.v(at)]]
        : [[frame.h(at), frame.v(from)], [frame.h(at), frame.v(to)]];
      const clipped = ends.map((end) => [
        Math.max(2, Math.min(frame.width - 2, end[0])), Math.max(2, Math.min(frame.height - 2, end[1])),
      ]);
      const drawn = line(clipped[0][0], clipped[0][1], clipped[1][0], clipped[1][1], 'dim s-' + state.name);
      if (Math.hypot(clipped[0][0] - clipped[1][0], clipped[0][1] - clipped[1][1]) > 20) {
        drawn.setAttribute('marker-start', 'url(#' + marker + '-end)');
        drawn.setAttribute('marker-end', 'url(#' + marker + '-end)');
      }
      into.append(drawn);
      clipped.forEach((end) => into.append(across
        ? line(end[0], end[1] - 6, end[0], end[1] + 6, 'dim-end s-' + state.name)
        : line(end[0] - 6, end[1], end[0] + 6, end[1], 'dim-end s-' + state.name)));
      const words = NUMBERS[index] + ' ' + Words.fineDown(gap.gap) + ' ' + state.word;
      const middle = [(clipped[0][0] + clipped[1][0]) / 2, (clipped[0][1] + clipped[1][1]) / 2];
      const half = words.length * 3.4 + 10;
      const middles = [];
      [0, 16, -16, 32, -32, 48, -48, 64, -64].forEach((off) => {
        if (across) {
          middles.push([middle[0], middle[1] - 14 - off], [middle[0], middle[1] + 14 + off],
            [clipped[1][0] + half, middle[1] + off], [clipped[0][0] - half, middle[1] + off]);
        } else {
          middles.push([middle[0] + half, middle[1] + off], [middle[0] - half, middle[1] + off]);
        }
      });
      const place = room.find(words, middles, null, 6.8);
      if (place !== null) {
        into.append(text(place, words, 'dim-text s-' + state.name));
      }
    });
  }

  function spindle(ctx, frame, into) {
    const x = frame.h(ctx.state.spindleX);
    const y = frame.v(ctx.state.spindleY);
    into.append(Dom.draw('g', { class: 'spindle', 'data-drag': 'spindle' },
      Dom.draw('title', {}, 'spindle'),
      Dom.draw('circle', { cx: x.toFixed(1), cy: y.toFixed(1), r: 22, class: 'grip' }),
      Dom.draw('circle', { cx: x.toFixed(1), cy: y.toFixed(1), r: 8, class: 'spindle-ring' }),
      line(x - 14, y, x + 14, y, 'spindle-cross'), line(x, y - 14, x, y + 14, 'spindle-cross')));
  }

  function size(svg, frame) {
    svg.setAttribute('viewBox', '0 0 ' + frame.width.toFixed(1) + ' ' + frame.height.toFixed(1));
    Dom.clear(svg);
  }

  /* Draws the plan into svg and returns its frame, which converts pointer positions. */
  function plan(svg, ctx, width) {
    const extent = Scene.planExtent(ctx);
    const frame = Scene.frame(extent.x, extent.y, width, Math.max(260, Math.min(620, width)));
    const room = Scene.labels(frame);
    const back = Dom.draw('g', {});
    const names = Dom.draw('g', {});
    const dims = Dom.draw('g', { class: 'dims' });
    size(svg, frame);
    svg.append(patterns('plan'), back);
    const table = Scene.table(ctx.machine);
    const top = Scene.rectangle(frame, table.x, table.y);
    if (top !== null) {
      back.append(shape(top, { class: 'table' }, 'table'));
    }
    dimensions(ctx, frame, ['x', 'y'], 'plan', dims, room);
    slots(ctx, frame, back, room);
    const guards = standingGuards(ctx);
    guards.forEach((one) => {
      const over = Model.guardSwept(ctx.data, ctx.machine, ctx.vise, one.guard, ctx.state);
      const seen = Scene.rectangle(frame, over.x, over.y);
      if (seen !== null) {
        back.append(shape(seen, { class: 'swept' }, one.guard.name + ', over the whole travel'));
      }
    });
    const reach = Scene.rectangle(
      frame,
      Scene.grown([ctx.machine.spindle[0], ctx.machine.spindle[0]], ctx.machine.reach[0]),
      Scene.grown([ctx.machine.spindle[1], ctx.machine.spindle[1]], ctx.machine.reach[1]));
    if (reach !== null) {
      back.append(shape(reach, { class: 'reach' }, 'what the spindle reaches'));
    }
    const vise = Dom.draw('g', { class: 'vise', 'data-drag': 'vise' });
    svg.append(vise);
    bodies(standingParts(ctx), frame, ['x', 'y'], vise, room);
    const hatched = Dom.draw('g', { class: 'guards' });
    svg.append(hatched);
    bodies(guards.map((one) => ({
      box: one.box, name: 'guard plan-hatched', title: one.guard.name, label: 'guard-name',
    })), frame, ['x', 'y'], hatched, room);
    svg.append(names, dims);
    spindle(ctx, frame, svg);
    return frame;
  }

  /* The side view from the right: the operator stands on the left. */
  function side(svg, ctx, width) {
    const vise = Scene.viseHull(ctx);
    const extent = Scene.planExtent(ctx);
    const frame = Scene.frame(
      extent.y, [-45 * Model.MM, Math.max(vise.z[1], 60 * Model.MM) + 50 * Model.MM], width, 260);
    const room = Scene.labels(frame);
    const dims = Dom.draw('g', { class: 'dims' });
    size(svg, frame);
    svg.append(patterns('side'));
    const table = Scene.rectangle(frame, Scene.table(ctx.machine).y, [-Infinity, 0]);
    if (table !== null) {
      svg.append(shape(table, { class: 'table' }, 'table'));
      label(svg, room, 'table', { rectangle: table, polygon: null }, [], 'slot-number');
    }
    dimensions(ctx, frame, ['y', 'z'], 'side', dims, room);
    const parts = Dom.draw('g', {});
    // From the side a turned part is what all its strips cover together.
    bodies(standingParts(ctx).map((one) => Object.assign(one, { outline: null })),
      frame, ['y', 'z'], parts, room);
    const guards = Dom.draw('g', { class: 'guards' });
    const beside = Scene.grown(vise.x, 40 * Model.MM);
    bodies(standingGuards(ctx)
      .filter((one) => one.box.x[0] <= beside[1] && one.box.x[1] >= beside[0])
      .map((one) => ({
        box: one.box, name: 'guard side-hatched', title: one.guard.name, label: 'guard-name',
      })), frame, ['y', 'z'], guards, room);
    svg.append(parts, guards, dims,
      text([34, frame.height - 8], 'operator', 'slot-number'));
    return frame;
  }

  return { plan: plan, side: side, NUMBERS: NUMBERS };
})();
