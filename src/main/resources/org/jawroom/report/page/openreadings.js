/*
 * The readings known within bounds of the pairing shown: a slider and a number field for each, to
 * suppose a value. What is supposed never becomes a verdict.
 */
const OpenReadings = (() => {
  const STEPS = 20;
  let ctx = null;
  let changed = null;
  let fields = [];

  /* `tables`: machine and vise as the tables have them, and what is supposed of each. */
  const begin = (machine, vise) => ({
    machine: machine, vise: vise, supposed: { machine: {}, vise: {} },
  });

  /* Puts the machine and the vise with the values supposed into the context. */
  function apply() {
    const tables = ctx.tables;
    ctx.machine = Suppose.machine(ctx.data.far, tables.machine, tables.supposed.machine);
    ctx.vise = Suppose.vise(ctx.data.far, tables.vise, tables.supposed.vise);
  }

  const both = (context) => ['machine', 'vise'].flatMap((whose) =>
    Suppose.readings(context.tables[whose]).map((reading) => ({ whose: whose, reading: reading })));

  /* What is supposed, in words: `Supposing rear_gap is 25.00 mm`; empty if nothing is. */
  function words(context) {
    const supposed = both(context)
      .filter((one) => context.tables.supposed[one.whose][one.reading.name] !== undefined)
      .map((one) => one.reading.name + ' is ' + Words.withUnit(
        Words.finePlace(context.tables.supposed[one.whose][one.reading.name])));
    return supposed.length === 0 ? '' : 'Supposing ' + supposed.join(', ');
  }

  function rangeWords(reading) {
    const [least, most] = reading.range;
    if (least === null && most === null) {
      return 'not measured';
    }
    if (most === null) {
      return least === 0 ? 'not measured' : 'from ' + Words.withUnit(Words.fineUp(least)) + ' on';
    }
    return least === null
      ? 'up to ' + Words.withUnit(Words.fineDown(most))
      : Words.fineUp(least) + ' to ' + Words.withUnit(Words.fineDown(most));
  }

  function set(one, value) {
    const values = ctx.tables.supposed[one.whose];
    if (value === null) {
      delete values[one.reading.name];
    } else {
      values[one.reading.name] = value;
    }
    apply();
    show();
    changed();
  }

  /* The row of one reading: its range, a slider where it has both ends, and a number field. */
  function row(one, index) {
    const reading = one.reading;
    const [least, most] = reading.range;
    const id = 'suppose-' + index;
    const value = () => ctx.tables.supposed[one.whose][reading.name];
    const slider = least === null || most === null ? null : Controls.slider({
      id: id,
      label: reading.name + ', ' + rangeWords(reading),
      least: least,
      most: most,
      step: 2 * Math.max(1, Math.round(Math.min(Words.slide(), (most - least) / STEPS) / 2)),
      press: Math.min(Words.step(), most - least),
      value: least,
      format: (length) => (value() === undefined ? 'at worst' : Words.withUnit(Words.finePlace(length))),
      changed: (length) => set(one, length),
    });
    const field = Controls.length(id + '-value', 'Suppose ' + reading.name + ' is',
      slider === null ? reading.name + ', ' + rangeWords(reading) : 'or type it', (length) => {
        if (length !== null && ((least !== null && length < least) || (most !== null && length > most))) {
          return 'Not within ' + rangeWords(reading);
        }
        set(one, length);
        return '';
      });
    fields.push({
      show: () => {
        if (slider !== null) {
          slider.set(value() === undefined ? least : value());
        }
        field.set(value() === undefined ? null : value());
      },
    });
    return Dom.make('div', { class: 'open-reading' }, slider === null ? null : slider.element, field.element);
  }

  const show = () => fields.forEach((field) => field.show());

  /* The folded box, null if nothing is open. */
  function box(context, change) {
    ctx = context;
    changed = change;
    fields = [];
    const all = both(ctx);
    if (all.length === 0) {
      return null;
    }
    const free = all.filter((one) => !one.reading.fixed);
    const fixed = all.filter((one) => one.reading.fixed).map((one) => one.reading.name);
    const made = Dom.make('details', { id: 'suppose' },
      Dom.make('summary', {}, 'Known within bounds: ' + all.map((one) => one.reading.name).join(', ')));
    if (free.length > 0) {
      made.append(
        Dom.make('p', { class: 'note' }, 'The verdict takes each at worst. Suppose a value to see what it would'
          + ' do to the gaps at the place shown, the others at worst. That is no verdict: measure, and change'
          + ' the tables.'),
        ...free.map(row),
        Controls.button('Suppose nothing', () => {
          ctx.tables.supposed = { machine: {}, vise: {} };
          apply();
          show();
          changed();
        }, { id: 'suppose-nothing' }));
    }
    if (fixed.length > 0) {
      made.append(Dom.make('p', { class: 'note' }, 'More than a face depends on ' + fixed.join(', ')
        + ': change the tables to see what a value does.'));
    }
    made.open = words(ctx) !== '';
    show();
    return made;
  }

  return { begin: begin, box: box, words: words };
})();
