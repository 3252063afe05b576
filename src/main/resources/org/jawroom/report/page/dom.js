/* Builds elements; content from the tables enters as text only. */
const Dom = (() => {
  const SVG = 'http://www.w3.org/2000/svg';

  function fill(element, attributes, children) {
    Object.keys(attributes).forEach((name) => {
      const value = attributes[name];
      if (value === true) {
        element.setAttribute(name, '');
      } else if (value !== false && value !== null && value !== undefined) {
        element.setAttribute(name, String(value));
      }
    });
    element.append(...children.filter((child) => child !== null && child !== undefined));
    return element;
  }

  function clear(element) {
    while (element.firstChild) {
      element.removeChild(element.firstChild);
    }
    return element;
  }

  return {
    make: (tag, attributes, ...children) => fill(document.createElement(tag), attributes, children),
    draw: (tag, attributes, ...children) =>
      fill(document.createElementNS(SVG, tag), attributes, children),
    clear: clear,
    byId: (id) => document.getElementById(id),
    /* A name from the tables, isolated so that it cannot reorder adjacent text. */
    name: (text) => fill(document.createElement('bdi'), {}, [text]),
  };
})();
