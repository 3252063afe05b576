/*
 * Gaps found at the machine: what each says of the tables, and all of them as rows of the table
 * checks. What was typed stays while the page is open.
 */
const Checks = (() => {
  const LISTED = 8;
  const GRAIN = Model.MM / 1000;
  const HEADER = ['machine', 'vise', 'handle_to', 'from_left', 'from_front', 'part', 'guard', 'opening',
    'situation', 'axis', 'found', 'tolerance', 'source', 'measured', 'unit'];
  const typed = new Map();
  let made = null;
  let listed = '';

  const rounded = (length) => Math.round(length / GRAIN) * GRAIN;
  const mm = (length) => (length / Model.MM).toFixed(3);
  const safe = (thing) => (thing.csv === undefined ? thing.name : thing.csv);

  /* The place and the opening as a row of the table has them, so that both say the same. */
  function place(ctx, now) {
    const at = Object.assign({}, now, { opening: rounded(now.opening) });
    const range = ctx.tables.vise.opening;
    at.opening = Math.max(range[0], Math.min(range[1], at.opening));
    const measures = Readout.measures(ctx, now);
    at.x = now.x + rounded(measures[0].at) - measures[0].at;
    at.y = now.y + rounded(measures[1].at) - measures[1].at;
    return { at: at, left: rounded(measures[0].at), front: rounded(measures[1].at) };
  }

  function opening(range, length) {
    return length === range[0] ? 'closed' : length === range[1] ? 'open' : mm(length) + ' mm';
  }

  /* The tightest gaps at this place, opening and situation; bolts have cards of their own. */
  function rows(ctx, now) {
    const here = place(ctx, now);
    const machine = ctx.tables.machine;
    const vise = ctx.tables.vise;
    const unclear = Suppose.readings(vise).filter((one) => one.fixed).map((one) => one.name);
    const seen = [];
    return Model.sweptGaps(ctx.data, machine, vise, here.at, [here.at.opening, here.at.opening])
      .filter((gap) => gap.situation === now.situation && gap.part.name !== 'bolts'
        && !(gap.part.moves || []).some((move) => unclear.includes(move[0])))
      .filter((gap) => {
        const pair = gap.part.name + '\n' + gap.guard.name;
        return !seen.includes(pair) && seen.push(pair) > 0;
      })
      .slice(0, LISTED)
      .map((gap) => {
        const cells = [safe(machine), safe(vise), now.turn, mm(here.left), mm(here.front), safe(gap.part),
          safe(gap.guard), opening(vise.opening, here.at.opening),
          now.situation === Model.CUTTING ? 'cutting' : 'loading', gap.axis];
        const named = Model.partsOf(vise, now).filter((one) => one.name === gap.part.name
          && Model.counts(one, now.situation));
        return { gap: gap, cells: cells, key: cells.join('\n'), range: (tolerance) => Found.expected(
          ctx.data, machine, vise, named, gap.guard, here.at, gap.axis, tolerance) };
      })
      .filter((row) => row.range(0) !== null);
  }

  function rangeWords(range) {
    const least = range.least === null ? null : Words.fineDown(Found.floor(range.least, range.over));
    const most = range.most === null ? null : Words.fineUp(-Found.floor(-range.most, range.over));
    return least === null ? (most === null ? 'any' : 'up to ' + most)
      : most === null ? least + ' or more' : least + ' to ' + most;
  }

  /* What a gap found says; one below the clearance comes first. */
  function verdict(row, entry) {
    if (entry === undefined || entry.found === null) {
      return { stop: false, words: '' };
    }
    const said = Found.says(row.range(entry.tolerance), entry.found);
    const stop = entry.found < row.gap.guard.clearance;
    return {
      stop: stop,
      words: (stop ? 'STOP: less than the clearance required. ' : '') + said.word
        + (said.by === 0 ? '' : ' by ' + Words.withUnit(Words.fineUp(said.by))),
    };
  }

  function line(row, index) {
    const name = row.gap.part.name + ' – ' + row.gap.guard.name;
    const says = Dom.make('td', { class: 'says', role: 'status' });
    const entry = () => typed.get(row.key) || { found: null, tolerance: 0, cells: row.cells };
    const show = () => {
      const said = verdict(row, typed.get(row.key));
      says.textContent = said.words;
      says.classList.toggle('s-hit', said.stop || said.words.startsWith('closer'));
    };
    const take = (change) => {
      const next = Object.assign({}, entry(), change);
      if (next.found === null) {
        typed.delete(row.key);
      } else {
        typed.set(row.key, next);
      }
      show();
      copied();
      return '';
    };
    const found = Controls.length('found-' + index, 'Found, ' + name, '', (length) => take({ found: length }));
    const off = Controls.length('off-' + index, 'Tolerance, ' + name, '±', (length) => (length !== null && length < 0
      ? 'Not below 0'
      : take({ tolerance: length === null ? 0 : length })));
    found.set(entry().found);
    off.set(entry().tolerance === 0 ? null : entry().tolerance);
    show();
    return Dom.make('tr', {},
      Dom.make('th', { scope: 'row' }, Dom.name(row.gap.part.name), ' – ', Dom.name(row.gap.guard.name),
        ', along ' + row.gap.axis),
      Dom.make('td', {}, rangeWords(row.range(0))), Dom.make('td', {}, found.element, off.element), says);
  }

  const quoted = (cell) => (/[",\r\n]/.test(cell) ? '"' + cell.replace(/"/g, '""') + '"' : cell);

  function csv() {
    const lines = [HEADER];
    typed.forEach((entry) => lines.push(entry.cells.concat(String(entry.found / Model.MM),
      entry.tolerance === 0 ? '' : String(entry.tolerance / Model.MM), '', '', 'mm')));
    return lines.map((cells) => cells.map(quoted).join(',') + '\r\n').join('');
  }

  function copied() {
    made.text.value = typed.size === 0 ? '' : csv();
    made.text.hidden = typed.size === 0;
    made.copy.disabled = typed.size === 0;
    made.box.classList.toggle('used', typed.size > 0);
  }

  /* The folded box. */
  function box() {
    const heading = (words) => Dom.make('th', { scope: 'col' }, words);
    made = {
      body: Dom.make('tbody', {}),
      text: Dom.make('textarea', { id: 'checks-csv', rows: 5, readonly: true, 'aria-label': 'Rows of the table checks' }),
    };
    made.copy = Controls.button('Copy as rows of checks', () => {
      made.text.select();
      if (navigator.clipboard !== undefined) {
        navigator.clipboard.writeText(csv()).catch(() => document.execCommand('copy'));
      } else {
        document.execCommand('copy');
      }
    }, { id: 'copy-checks' });
    made.box = Dom.make('details', { id: 'found' },
      Dom.make('summary', {}, 'Gaps found at the machine'),
      Dom.make('p', { class: 'note' }, 'Set place, jaws and situation as they stand; move the axes to where part and'
        + ' guard are nearest. Expected is what the tables allow, tolerances included.'),
      Dom.make('table', { id: 'found-rows' }, Dom.make('thead', {}, Dom.make('tr', {}, heading('from – to'),
        heading('expected'), heading('found'), heading('says'))), made.body),
      Dom.make('div', { class: 'buttons' }, made.copy), made.text);
    made.box.open = typed.size > 0;
    listed = '';
    copied();
    return made.box;
  }

  /* Lists the gaps at the moment shown; fields stay as they are while these are the same. */
  function update(ctx, now) {
    // The rows of checks name no turned vise.
    made.box.hidden = ctx.vise.turned === true;
    const all = made.box.hidden ? [] : rows(ctx, now);
    const keys = all.map((row) => row.key).join('\n\n');
    if (keys !== listed) {
      listed = keys;
      Dom.clear(made.body).append(...all.map(line));
    }
  }

  return { box: box, update: update };
})();
