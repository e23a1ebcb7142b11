"use strict";

/* Elements from names, attributes and children. A string becomes a text node: nothing here can turn words into markup. */
function build(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === true) element.setAttribute(name, "");
    else if (value !== false && value !== null && value !== undefined) element.setAttribute(name, value);
  }
  element.append(...children.flat().filter((child) => child !== null && child !== undefined && child !== ""));
  return element;
}

function el(tag, attributes = {}, ...children) {
  return build(document.createElement(tag), attributes, children);
}

function svg(tag, attributes = {}, ...children) {
  return build(document.createElementNS("http://www.w3.org/2000/svg", tag), attributes, children);
}

function sign(standing) {
  return el("span", { class: `sign sign-${standing}`, "aria-hidden": "true" });
}

/* The data of a JSON island. */
function island(id) {
  return JSON.parse(document.getElementById(id).textContent);
}
