"use strict";

/* A listing's words with its claims marked in place. Each stance has a shape and a word of its own, not only a colour. */
const STANCES = {
  asserted: ["", "said of this copy"],
  denied: ["not", "said not to be so"],
  hedged: ["perhaps", "put forward with doubt"],
  unchecked: ["not seen", "not looked at, not known"],
  elsewhere: ["others", "said of other copies"],
};

/* pieces: [words, stance or "", numbers of findings]. Neighbours of one stance show as one mark, tagged once. */
function markedWords(pieces, { tags = true } = {}) {
  let before = "";
  return pieces.map(([words, stance, findings]) => {
    const tag = tags && stance && stance !== before && STANCES[stance][0];
    before = stance;
    const on = findings.length ? findings.join(" ") : null;
    if (!stance) return on === null ? words : el("span", { "data-findings": on }, words);
    return el(
      "mark",
      { class: `said ${stance}`, "data-findings": on, title: STANCES[stance][1] },
      tag ? el("span", { class: "tag" }, tag) : "",
      tag ? " " : "",
      words,
    );
  });
}

/* What the marks that occur mean; null where there are none. */
function legend(pieces) {
  const told = new Set(pieces.map((piece) => piece[1]));
  const used = Object.keys(STANCES).filter((stance) => told.has(stance));
  if (!used.length) return null;
  return el(
    "p",
    { class: "legend" },
    "Marked: ",
    used.map((stance) => [markedWords([[STANCES[stance][1], stance, []]]), " "]).flat(2),
  );
}
