"use strict";

/* Marks under the words of a textarea: the same words stand behind it, letter for letter, and carry the marks. */
function mirror(field, behind) {
  let pieces = [];

  function draw() {
    behind.replaceChildren(...markedWords(pieces, { tags: false }), "\u200b");
    field.style.height = `${behind.offsetHeight}px`;
  }

  return {
    show(read) {
      pieces = read;
      draw();
    },
    /* Between two readings marks stay on the words they were made for: what was typed in between is plain. */
    typed() {
      const old = pieces.map(([words]) => words).join("");
      const now = field.value;
      let head = 0;
      while (head < old.length && head < now.length && old[head] === now[head]) head += 1;
      let tail = 0;
      while (tail < old.length - head && tail < now.length - head && old[old.length - 1 - tail] === now[now.length - 1 - tail]) tail += 1;
      pieces = [...part(0, head), [now.slice(head, now.length - tail), "", []], ...part(old.length - tail, old.length)].filter(([words]) => words);
      draw();
    },
  };

  function part(from, to) {
    let at = 0;
    return pieces.map(([words, stance, findings]) => {
      const start = at;
      at += words.length;
      return [words.slice(Math.max(from - start, 0), Math.max(to - start, 0)), stance, findings];
    });
  }
}
