/* Sliders with a readout and step buttons, on exact lengths. */
const Controls = (() => {
  /*
   * A slider over [least, most] in steps; the last step may be shorter, so that both ends are
   * reached exactly. options: id, label, least, most, step, press (the step of a button), value,
   * format(length), changed(length) and, if there is a description, describedBy.
   */
  function slider(options) {
    let value = options.value;
    const steps = Math.max(1, Math.ceil((options.most - options.least) / options.step));
    const input = Dom.make('input', {
      type: 'range', id: options.id, min: 0, max: steps, step: 1, 'aria-label': options.label,
    });
    if (options.describedBy !== undefined) {
      input.setAttribute('aria-describedby', options.describedBy);
    }
    const output = Dom.make('output', { for: options.id });
    const button = (sign, words) => Dom.make(
      'button', { type: 'button', class: 'step', 'aria-label': options.label + ': ' + words }, sign);
    const less = button('−', 'less');
    const more = button('+', 'more');
    const element = Dom.make('div', { class: 'slider' },
      Dom.make('label', { for: options.id }, options.label), output, less, input, more);

    function show() {
      input.value = String(Math.round((value - options.least) / options.step));
      if (value >= options.most) {
        input.value = String(steps);
      }
      output.textContent = options.format(value);
      input.setAttribute('aria-valuetext', options.format(value));
    }

    function set(length) {
      value = Math.max(options.least, Math.min(options.most, length));
      show();
    }

    function change(length) {
      set(length);
      options.changed(value);
    }

    input.addEventListener('input', () => change(options.least + Number(input.value) * options.step));
    less.addEventListener('click', () => change(value - options.press));
    more.addEventListener('click', () => change(value + options.press));
    set(value);
    return {
      element: element,
      set: set,
      enable: (enabled) => [input, less, more].forEach((part) => {
        part.disabled = !enabled;
      }),
    };
  }

  /* A choice of a few options, all visible: options are [value, words]. */
  function segments(name, legend, options, changed) {
    const inputs = options.map((option) => Dom.make(
      'input', { type: 'radio', name: name, value: option[0] }));
    inputs.forEach((input) => input.addEventListener('change', () => changed(input.value)));
    return {
      element: Dom.make('fieldset', { class: 'segments' }, Dom.make('legend', {}, legend),
        ...options.map((option, i) => Dom.make('label', {}, inputs[i], Dom.make('span', {}, option[1])))),
      set: (value) => inputs.forEach((input) => {
        input.checked = input.value === String(value);
      }),
    };
  }

  /* A list to choose from: options are [value, words]. */
  function choice(id, label, options, value, changed) {
    const select = Dom.make('select', { id: id },
      ...options.map((option) => Dom.make('option', { value: option[0] }, option[1])));
    select.value = String(value);
    select.addEventListener('change', () => changed(select.value));
    return {
      element: Dom.make('div', { class: 'field' }, Dom.make('label', { for: id }, label), select),
      set: (chosen) => {
        select.value = String(chosen);
      },
    };
  }

  /* Digits with a decimal point, in the unit shown; whole nanometres. Null: no such number. */
  function parsed(text) {
    return /^-?(\d+\.?\d*|\.\d+)$/.test(text) && Math.abs(Number(text)) < 1e5
      ? 2 * Math.round((Number(text) * (Words.unit() === 'mm' ? Model.MM : Model.INCH)) / 2)
      : null;
  }

  /*
   * A field for a length in the unit shown. taken(length): null if it was emptied; returns what is
   * wrong with it, or ''.
   */
  function length(id, name, label, taken) {
    const input = Dom.make('input', {
      type: 'text', inputmode: 'decimal', id: id, autocomplete: 'off', 'aria-label': name + ', ' + Words.unit(),
      'aria-describedby': id + '-fault',
    });
    const fault = Dom.make('p', { id: id + '-fault', class: 'fault', role: 'status' });
    input.addEventListener('change', () => {
      const text = input.value.trim().replace('−', '-');
      const value = parsed(text);
      const wrong = text !== '' && value === null
        ? 'Write a number with a point, such as 25.5 (' + Words.unit() + ')'
        : taken(text === '' ? null : value);
      fault.textContent = wrong;
      input.setAttribute('aria-invalid', String(wrong !== ''));
    });
    return {
      element: Dom.make('div', { class: 'length' },
        Dom.make('label', { for: id }, label), input, Dom.make('span', {}, Words.unit()), fault),
      input: input,
      set: (value) => {
        const shown = value === null ? '' : Words.exact(value);
        if (parsed(input.value.trim()) !== value || shown === '') {
          input.value = shown;
        }
        fault.textContent = '';
        input.setAttribute('aria-invalid', 'false');
      },
    };
  }

  function button(words, pressed, attributes) {
    const made = Dom.make('button', Object.assign({ type: 'button' }, attributes || {}), words);
    made.addEventListener('click', pressed);
    return made;
  }

  return { slider: slider, segments: segments, choice: choice, length: length, button: button };
})();
