"use strict";

/* The ruler: printings along one axis, a bar for what each claim allows and one for each part, book above, jacket below. */
const RULER = { cell: 46, row: 20, line: 13, lines: 3, thin: 8, thick: 14 };
const NAMES = matchMedia("(max-width: 40rem)").matches ? { width: 150, letters: 19 } : { width: 212, letters: 29 };

function ruler(data) {
  const count = data.labels.length;
  const width = NAMES.width + count * RULER.cell + 2;
  const drawn = [];
  let y = 0;

  const left = (number) => NAMES.width + number * RULER.cell;
  const label = (words, at, kind = "") => {
    const short = words.length > NAMES.letters ? `${words.slice(0, NAMES.letters - 1)}…` : words;
    return svg("text", { x: NAMES.width - 10, y: at, "text-anchor": "end", class: `label ${kind}` }, short, svg("title", {}, words));
  };
  const runs = (places) => {
    const edges = data.editions.reduce((all, [, size]) => [...all, all.at(-1) + size], [0]);
    return places.reduce((all, place) => {
      const last = all.at(-1);
      if (last && last[1] === place && !edges.includes(place)) last[1] = place + 1;
      else all.push([place, place + 1]);
      return all;
    }, []);
  };
  const bar = (name, places, height, kind, strong) => {
    y += RULER.row;
    drawn.push(label(name, y - 5, strong ? "strong" : ""));
    drawn.push(svg("line", { class: "base", x1: left(0), x2: left(count), y1: y - 9, y2: y - 9 }));
    for (const [from, to] of runs(places)) {
      drawn.push(svg("rect", { class: kind, x: left(from) + 2, y: y - 9 - height / 2, width: (to - from) * RULER.cell - 4, height, rx: 2 }));
    }
  };
  const bracket = (places) => {
    y += RULER.row;
    drawn.push(label("claimed", y - 5, "strong"));
    for (const [from, to] of runs(places)) {
      const [a, b] = [left(from) + 3, left(to) - 3];
      drawn.push(svg("path", { class: "bracket", d: `M${a + 5} ${y - 15}H${a}V${y - 3}H${a + 5}M${b - 5} ${y - 15}H${b}V${y - 3}H${b - 5}` }));
    }
  };

  let at = 0;
  let lines = 1;
  for (const [name, size] of data.editions) {
    const room = Math.floor((size * RULER.cell) / 7);
    const all = wrapped(name, Math.max(room, 6));
    const rows = all.length > RULER.lines ? [...all.slice(0, RULER.lines - 1), `${all[RULER.lines - 1]}…`] : all;
    lines = Math.max(lines, rows.length);
    rows.forEach((words, number) => {
      drawn.push(svg("text", { class: "edition", x: left(at) + 2, y: 14 + number * RULER.line }, words, svg("title", {}, name)));
    });
    at += size;
  }
  y = 14 + (lines - 1) * RULER.line + 16;
  drawn.push(label("printing", y, "strong"));
  data.labels.forEach((words, number) => {
    drawn.push(svg("text", { class: "label", x: left(number) + RULER.cell / 2, y, "text-anchor": "middle" }, words));
  });
  y += 4;
  const top = y;
  if (data.claimed && data.claimed.length) bracket(data.claimed);
  for (const part of ["book", "jacket"]) {
    if (!data[part] && !data[`${part}_bars`].length) continue;
    for (const [name, places] of data[`${part}_bars`]) bar(name, places, RULER.thin, `thin ${part}`, false);
    if (data[part]) bar(data[part].length ? `${part}: left open` : `${part}: nothing left`, data[part], RULER.thick, `thick ${part}`, true);
    y += 5;
  }
  const both = data.book && data.jacket ? data.book.filter((place) => data.jacket.includes(place)) : [];
  const band = runs(both).map(([from, to]) =>
    svg("rect", { class: "both", x: left(from), y: top, width: (to - from) * RULER.cell, height: y - top }),
  );
  if (both.length) {
    y += 15;
    drawn.push(label("both", y - 3, "strong"));
    both.forEach((place) => {
      const middle = left(place) + RULER.cell / 2;
      drawn.push(svg("path", { class: "agree", d: `M${middle} ${y - 14}l6 10h-12z` }));
    });
  }
  const parting = [];
  at = 0;
  for (const [, size] of data.editions) {
    if (at) parting.push(svg("line", { class: "parting", x1: left(at), x2: left(at), y1: 2, y2: y }));
    at += size;
  }
  const height = y + 4;
  return el(
    "div",
    { class: "ruler", tabindex: "0", role: "group", "aria-label": "The ruler" },
    svg("svg", { viewBox: `0 0 ${width} ${height}`, width, height, role: "img", "aria-label": inWords(data) }, band, parting, drawn),
  );
}

/* Words on lines of so many letters; a word longer than a line is cut. */
function wrapped(words, letters) {
  return words.split(" ").reduce((lines, word) => {
    const short = word.length > letters ? `${word.slice(0, letters - 1)}…` : word;
    const joined = lines.length ? `${lines.at(-1)} ${short}` : short;
    return lines.length && joined.length <= letters ? [...lines.slice(0, -1), joined] : [...lines, short];
  }, []);
}

/* The ruler's picture as a sentence, for those who can't see it. */
function inWords(data) {
  const owners = data.editions.flatMap(([name, size]) => Array(size).fill(name));
  const told = (places) => places.map((place) => `${owners[place]} ${data.labels[place]}`).join(", ") || "nothing";
  const parts = [];
  if (data.claimed && data.claimed.length) parts.push(`Claimed: ${told(data.claimed)}.`);
  for (const part of ["book", "jacket"]) {
    for (const [name, places] of data[`${part}_bars`]) parts.push(`${name} allows for the ${part}: ${told(places)}.`);
    if (data[part]) parts.push(`Left open for the ${part}: ${told(data[part])}.`);
  }
  return parts.join(" ");
}
