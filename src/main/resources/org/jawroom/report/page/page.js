/* Assembles the page: parses the data and switches between the matrix and one pairing. */
(() => {
  const data = JSON.parse(Dom.byId('data').textContent);
  let shown = null;

  function texts() {
    Dom.byId('brief').textContent = data.brief;
    const list = Dom.byId('cautions').querySelector('ol');
    data.cautions.forEach((caution) => list.append(Dom.make('li', {}, caution)));
    const foot = Dom.byId('foot');
    const line = (words) => foot.append(Dom.make('p', {}, words));
    line('jawroom ' + data.version + (data.files.length === 0 ? '' : ', from ' + data.files
      .map((file) => file.name + ' (' + file.fingerprint.slice(0, 12) + ')').join(', ')));
    line('Settings: ' + data.settings.join('; '));
    if (data.warnings > 0) {
      line(data.warnings + ' warnings on the inputs: see jawroom check.');
    }
  }

  /* The URL fragment names the pairing by its indices in the tables, so that going back works. */
  const address = (machine, vise) => '#' + (machine + 1) + '/' + (vise + 1);

  function asked() {
    const found = /^#(\d+)\/(\d+)$/.exec(location.hash);
    if (found === null) {
      return null;
    }
    const machine = Number(found[1]) - 1;
    const vise = Number(found[2]) - 1;
    return data.machines[machine] !== undefined && data.vises[vise] !== undefined ? [machine, vise] : null;
  }

  function go() {
    const next = asked();
    const overview = Dom.byId('overview');
    const section = Dom.byId('pairing');
    overview.hidden = next !== null;
    section.hidden = next === null;
    document.body.className = next === null ? 'at-matrix' : 'at-pairing';
    if (next !== null) {
      Matrix.setCurrent(next[0], next[1]);
      Pairing.show(next[0], next[1]);
      window.scrollTo(0, 0);
      Dom.byId('pairing-title').focus({ preventScroll: true });
    } else if (shown !== null) {
      Matrix.update();
      Matrix.focus(shown[0], shown[1]);
    }
    shown = next;
  }

  function open(machine, vise) {
    location.hash = address(machine, vise);
  }

  function close() {
    location.hash = '#';
  }

  function units() {
    document.querySelectorAll('#units input').forEach((input) => {
      input.checked = input.value === data.unit;
      input.addEventListener('change', () => {
        Words.use(input.value);
        Matrix.unitChanged();
        Pairing.unitChanged();
      });
    });
    Words.use(data.unit);
  }

  texts();
  units();
  Matrix.start(data, open);
  Matrix.update();
  Pairing.start(data, open, close);
  document.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && shown !== null) {
      event.preventDefault();
      close();
    }
  });
  window.addEventListener('hashchange', go);
  go();
})();
