/*
 * The matrix: machines down, vises across; searchable, sortable, and compared with a wanted extra
 * clearance.
 */
const Matrix = (() => {
  const SHORT_SIGN = '▼';
  const CLOSE_SIGN = '▲';
  let data = null;
  let open = null;
  let extra = 0;
  let current = null;
  let rows = [];
  let columns = [];

  const pairing = (machine, vise) => data.pairings[machine * data.vises.length + vise];
  const finding = (entry) => data.findings[entry.finding];
  const fits = (entry) => entry.finding === 'FITS' || entry.finding === 'FITS_BUT';

  /* The margin as displayed: the rounded-down value is compared with the extra clearance. */
  function shownMargin(entry) {
    const grain = Words.coarseGrain();
    return Math.floor(entry.margin / grain) * grain;
  }

  /*
   * A margin below the wanted one is short, less than what is comfortable above it close; margins
   * below 0 are not compared.
   */
  function standing(entry) {
    if (entry.margin === undefined || entry.margin < 0) {
      return '';
    }
    const left = shownMargin(entry) - extra;
    return left < 0 ? 'short' : left < data.comfort ? 'close' : 'well';
  }

  function sign(entry, stands) {
    if (stands === 'short') {
      return SHORT_SIGN;
    }
    return stands === 'close' && entry.finding === 'FITS' ? CLOSE_SIGN : finding(entry).sign;
  }

  function label(entry, machine, vise, stands) {
    const words = [data.vises[vise].name + ' on ' + data.machines[machine].name + ': ' + finding(entry).word];
    if (entry.finding === 'FITS_BUT') {
      words.push('but mind: ' + (entry.marks || []).map(Words.pick).join('; '));
    }
    if (entry.margin !== undefined) {
      words.push('margin ' + Words.withUnit(Words.coarseDown(entry.margin)));
    }
    if (stands === 'short') {
      words.push('less than the extra clearance wanted');
    }
    if (stands === 'close') {
      words.push('little to spare');
    }
    return words.join(', ');
  }

  function cell(machine, vise) {
    const entry = pairing(machine, vise);
    const stands = standing(entry);
    const word = finding(entry).word + (entry.finding === 'FITS_BUT' ? ' !' : '');
    const marks = (entry.marks || []).map((mark) => '! ' + Words.pick(mark));
    const button = Dom.make(
      'button',
      {
        type: 'button',
        class: 'cell f-' + entry.finding + (stands === '' ? '' : ' ' + stands),
        'aria-label': label(entry, machine, vise, stands),
        title: [Words.pick(entry.reason), ...marks].filter((line) => line !== '').join('; '),
        tabindex: -1,
        'data-machine': machine,
        'data-vise': vise,
      },
      Dom.make('span', { class: 'sign', 'aria-hidden': 'true' }, sign(entry, stands)),
      Dom.make('span', { class: 'figure' }, entry.margin === undefined ? '' : Words.coarseDown(entry.margin)),
      Dom.make('span', { class: 'word' }, word));
    return Dom.make('td', {}, button);
  }

  function heading(thing, scope, facts) {
    return Dom.make(
      'th',
      { scope: scope },
      Dom.make('span', { class: 'name' }, Dom.name(thing.name), thing.candidate ? ' (candidate)' : ''),
      Dom.make('span', { class: 'facts' }, Words.pick(facts)));
  }

  /* A search word that occurs among machines filters the rows, among vises the columns. */
  function narrowed() {
    const words = Dom.byId('search').value.toLowerCase().split(/\s+/).filter((word) => word !== '');
    const text = (thing) => (thing.name + ' ' + (thing.about || '')).toLowerCase();
    const has = (things, word) => things.some((thing) => text(thing).includes(word));
    const all = (things, asked) => things
      .map((thing, index) => index)
      .filter((index) => asked.every((word) => text(things[index]).includes(word)));
    const lost = words.filter((word) => !has(data.machines, word) && !has(data.vises, word));
    if (lost.length > 0) {
      return { rows: [], columns: [], lost: lost };
    }
    return {
      rows: all(data.machines, words.filter((word) => has(data.machines, word))),
      columns: all(data.vises, words.filter((word) => has(data.vises, word))),
      lost: [],
    };
  }

  /* Whether it still fits with the wanted extra clearance. */
  const counts = (entry) => fits(entry) && standing(entry) !== 'short';

  function sorted(indices, how, things, fitting) {
    const byInput = (one, next) => one - next;
    if (how === 'name') {
      return indices.sort((one, next) =>
        things[one].name.localeCompare(things[next].name, 'en', { numeric: true }) || one - next);
    }
    return indices.sort(how === 'fits' ? (one, next) => fitting(next) - fitting(one) || one - next : byInput);
  }

  function arrange() {
    const left = narrowed();
    const machines = data.machines.map((machine, index) => index);
    const vises = data.vises.map((vise, index) => index);
    rows = sorted(left.rows, Dom.byId('sort-machines').value, data.machines,
      (machine) => vises.filter((vise) => counts(pairing(machine, vise))).length);
    columns = sorted(left.columns, Dom.byId('sort-vises').value, data.vises,
      (vise) => machines.filter((machine) => counts(pairing(machine, vise))).length);
    return left.lost;
  }

  function update() {
    const lost = arrange();
    const table = Dom.byId('matrix');
    const head = Dom.clear(table.tHead);
    const body = Dom.clear(table.tBodies[0]);
    head.append(Dom.make('tr', {}, Dom.make('td', { class: 'corner' }, 'machine ▼ vise ►'),
      ...columns.map((vise) => heading(data.vises[vise], 'col', data.vises[vise].facts))));
    rows.forEach((machine) => body.append(Dom.make('tr', {},
      heading(data.machines[machine], 'row', data.machines[machine].facts),
      ...columns.map((vise) => cell(machine, vise)))));
    if (current === null || !rows.includes(current[0]) || !columns.includes(current[1])) {
      current = rows.length > 0 && columns.length > 0 ? [rows[0], columns[0]] : null;
    }
    const button = current === null ? null : buttonOf(current[0], current[1]);
    if (button !== null) {
      button.tabIndex = 0;
    }
    document.documentElement.style.setProperty('--columns', String(Math.max(columns.length, 1)));
    document.documentElement.style.setProperty('--rows', String(Math.max(rows.length, 1)));
    announce(lost);
    key();
  }

  function announce(lost) {
    if (lost.length > 0) {
      Dom.byId('shown').textContent = 'Nothing is named “' + lost[0] + '”.';
      return;
    }
    const shown = rows.length * columns.length;
    const staying = data.pairings.filter((entry) => entry.margin !== undefined && entry.margin >= 0
      && shownMargin(entry) >= extra).length;
    Dom.byId('shown').textContent = 'Shown: ' + rows.length + ' of ' + data.machines.length + ' machines, '
      + columns.length + ' of ' + data.vises.length + ' vises, ' + shown + ' pairings. Of all '
      + data.pairings.length + ', ' + staying + ' have a margin of '
      + Words.withUnit(Words.coarseDown(extra)) + ' or more.';
  }

  function key() {
    const list = Dom.clear(Dom.byId('key'));
    Object.keys(data.findings).forEach((name) => {
      const count = data.pairings.filter((entry) => entry.finding === name).length;
      const shown = data.findings[name];
      list.append(Dom.make('li', { 'data-finding': name, 'data-count': count },
        Dom.make('span', { class: 'swatch f-' + name, 'aria-hidden': 'true' }, shown.sign),
        shown.words + ': ' + count));
    });
    [['short', SHORT_SIGN, 'less than the extra clearance wanted'],
      ['close', CLOSE_SIGN, 'less than ' + Words.withUnit(Words.fineUp(data.comfort)) + ' to spare']]
      .filter((more) => more[0] === 'short' || data.comfort > 0)
      .forEach((more) => {
        list.append(Dom.make('li', {},
          Dom.make('span', { class: 'swatch ' + more[0], 'aria-hidden': 'true' }, more[1]), more[2]));
      });
  }

  function buttonOf(machine, vise) {
    return document.querySelector(
      '#matrix button[data-machine="' + machine + '"][data-vise="' + vise + '"]');
  }

  function focus(machine, vise) {
    const before = document.querySelector('#matrix button[tabindex="0"]');
    const button = buttonOf(machine, vise);
    if (button === null) {
      return;
    }
    if (before !== null) {
      before.tabIndex = -1;
    }
    current = [machine, vise];
    button.tabIndex = 0;
    button.focus();
  }

  const MOVES = {
    ArrowUp: (row, column) => [row - 1, column],
    ArrowDown: (row, column) => [row + 1, column],
    ArrowLeft: (row, column) => [row, column - 1],
    ArrowRight: (row, column) => [row, column + 1],
    Home: (row) => [row, 0],
    End: (row) => [row, columns.length - 1],
  };

  function move(event) {
    const button = event.target.closest('button.cell');
    if (button === null || MOVES[event.key] === undefined || event.altKey || event.ctrlKey || event.metaKey) {
      return;
    }
    event.preventDefault();
    const next = MOVES[event.key](
      rows.indexOf(Number(button.dataset.machine)), columns.indexOf(Number(button.dataset.vise)));
    if (rows[next[0]] !== undefined && columns[next[1]] !== undefined) {
      focus(rows[next[0]], columns[next[1]]);
    }
  }

  function start(pageData, opener) {
    data = pageData;
    open = opener;
    const table = Dom.byId('matrix');
    table.addEventListener('keydown', move);
    table.addEventListener('click', (event) => {
      const button = event.target.closest('button.cell');
      if (button !== null) {
        current = [Number(button.dataset.machine), Number(button.dataset.vise)];
        open(current[0], current[1]);
      }
    });
    Dom.byId('search').addEventListener('input', update);
    Dom.byId('sort-machines').addEventListener('change', update);
    Dom.byId('sort-vises').addEventListener('change', update);
    slider();
  }

  /* Rebuilt when the unit changes, since its steps are those of the unit. */
  function slider() {
    const step = Words.unit() === 'mm' ? Model.MM / 2 : Model.INCH / 50;
    Dom.clear(Dom.byId('extra')).append(Controls.slider({
      id: 'extra-wanted',
      label: 'Extra clearance wanted',
      least: 0,
      most: Words.unit() === 'mm' ? 20 * Model.MM : step * 40,
      step: step,
      press: step,
      value: extra,
      format: (length) => Words.withUnit(Words.coarseDown(length)),
      changed: (length) => {
        extra = length;
        update();
      },
    }).element);
  }

  return {
    start: start,
    update: update,
    unitChanged: () => {
      extra = 0;
      slider();
      update();
    },
    focus: focus,
    setCurrent: (machine, vise) => {
      current = [machine, vise];
    },
  };
})();
