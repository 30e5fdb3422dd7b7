// Elements with their attributes and what stands in them. Text only ever enters as text.

const SVG = 'http://www.w3.org/2000/svg';

function fill(node, attributes, children) {
  Object.keys(attributes || {}).forEach(k => {
    node.setAttribute(k, attributes[k]);
  });
  children.forEach(function add(c) {
    if (Array.isArray(c)) {
      c.forEach(add);
    } else if (c !== null && c !== undefined && c !== '') {
      node.append(c);
    }
  });
  return node;
}

export function el(name, attributes = null, ...children) {
  return fill(document.createElement(name), attributes, children);
}

export function svg(name, attributes, ...children) {
  return fill(document.createElementNS(SVG, name), attributes, children);
}

export function heading(text) {
  return el('h2', null, text);
}

// A list of what each item makes.
export function listOf(items, make) {
  return el(
    'ul',
    null,
    items.map(item => el('li', null, make(item)))
  );
}
