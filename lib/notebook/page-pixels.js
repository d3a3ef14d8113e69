// Marks that a figure places in pixels (names beside the plot, labels above it, keys laid out by hand)
// follow their plot when a page draws it narrower. Part of the script of a page.

globalThis.wetsidePixels = (() => {
  const isObject = (value) => typeof value === "object" && value !== null && !Array.isArray(value);

  const wrapped = (written, width, size) => {
    const text = Array.isArray(written) ? written.join(" ") : written;
    if (typeof text !== "string") return text;
    const most = Math.max(12, Math.floor(width / (size * 0.54)));
    if (text.length <= most) return text;
    const lines = [""];
    for (const word of text.split(" ")) {
      const last = lines[lines.length - 1];
      if (last !== "" && last.length + 1 + word.length > most) lines.push(word);
      else lines[lines.length - 1] = last === "" ? word : `${last} ${word}`;
    }
    return lines;
  };

  /** Where a pixel goes when its plot changes width: what stands beside the plot stays beside it. */
  const pixelAt = (x, from, to) => {
    if (x >= from) return x - from + to;
    return x <= 0 ? x : (x * to) / from;
  };
  const pixelOf = (channel) =>
    isObject(channel) && typeof channel.value === "number" ? channel.value : undefined;

  /** A view, and the layers in it, with marks placed in pixels moved to a plot of another width. */
  const shifted = (view, from, to) => {
    const copy = { ...view };
    if (Array.isArray(copy.layer)) copy.layer = copy.layer.map((part) => shifted(part, from, to));
    if (isObject(copy.mark) && typeof copy.mark.x === "number") {
      copy.mark = { ...copy.mark, x: pixelAt(copy.mark.x, from, to) };
    }
    const { x, x2 } = copy.encoding ?? {};
    const [start, end] = [pixelOf(x), pixelOf(x2)];
    // A box as wide as its words, from the left edge on, stays as wide.
    const box = start !== undefined && start <= 0 && end !== undefined && end < from;
    if (box || (start === undefined && end === undefined)) return copy;
    copy.encoding = { ...copy.encoding };
    if (start !== undefined) copy.encoding.x = { ...x, value: pixelAt(start, from, to) };
    if (end !== undefined) copy.encoding.x2 = { ...x2, value: pixelAt(end, from, to) };
    return copy;
  };

  /** Width of the sample before the words of a key, and height of its rows, as figures draw them. */
  const KEY_SAMPLE = 31;
  const KEY_ROW = 19;
  const KEY_GAP = 18;

  /** A key laid out by hand: samples and words in pixels, no axis. */
  const isKey = (view) =>
    Array.isArray(view.layer) &&
    view.view?.stroke === null &&
    view.layer.every(({ encoding }) => {
      return pixelOf(encoding?.x) !== undefined && pixelOf(encoding?.y) !== undefined;
    });

  const measure = document.createElement("canvas").getContext("2d");
  const lengthOf = (words) => {
    measure.font = "11px sans-serif";
    return measure.measureText(words).width;
  };

  /** The entries of a key in as many rows as they need. */
  const reflowed = (view, width, room) => {
    let [x, row, was] = [0, 0, 0];
    let entry = [];
    const layer = [];
    for (const part of view.layer) {
      entry.push(part);
      if (part.mark.type !== "text") continue;
      const [textX, textY] = [pixelOf(part.encoding.x), pixelOf(part.encoding.y)];
      const rowWas = Math.floor(textY / KEY_ROW);
      const words = wrapped(part.mark.text, room - KEY_SAMPLE, 10);
      const lines = Array.isArray(words) ? words : [words];
      const size = KEY_SAMPLE + Math.max(...lines.map(lengthOf));
      if (x > 0 && (rowWas > was || x + size > room)) [x, row] = [0, row + 1];
      was = rowWas;
      const [dx, dy] = [x - (textX - KEY_SAMPLE), (row - rowWas) * KEY_ROW];
      const mark = { ...part.mark, text: words, lineHeight: 13 };
      const moved = entry.map((each) => movedBy(each, dx, dy));
      layer.push(...moved.slice(0, -1), { ...movedBy(part, dx, dy), mark });
      x += size + KEY_GAP;
      if (lines.length > 1) [x, row] = [0, row + 1 + (lines.length - 1) * 0.7];
      entry = [];
    }
    const rows = x === 0 ? row : row + 1;
    return { ...view, width, height: rows * KEY_ROW, layer: [...layer, ...entry] };
  };

  /** Labels above a plot and their rules: one above the other where they would touch. */
  const LANE = 15;
  const LOWEST_LANE = -30;
  const inLanes = (view, width) => {
    if (!Array.isArray(view.layer)) return view;
    const ends = [];
    const lanes = new Map();
    const yOf = (part) => pixelOf(part?.encoding?.y) ?? 0;
    const labels = view.layer
      .map((part, i) => ({ part, i, x: pixelOf(part.encoding?.x), words: part.mark?.text }))
      .filter(({ part, x, words }) => x !== undefined && words && yOf(part) <= LOWEST_LANE);
    for (const { part, i, x, words } of labels.sort((a, b) => a.x - b.x)) {
      const length = lengthOf(words) + 10;
      const flips = part.mark.align === "left" && x + length > width + 90;
      const from = flips || part.mark.align === "right" ? x - length : x;
      const free = ends.findIndex((end) => end <= from);
      const lane = free < 0 ? ends.length : free;
      ends[lane] = from + length;
      lanes.set(i, { flips, y: LOWEST_LANE - LANE * lane });
    }
    const layer = view.layer.map((part, i) => {
      const own = lanes.get(i);
      const label = own ?? lanes.get(i + 1);
      if (label === undefined) return part;
      // A label's rule comes just before it and begins at the same height.
      const dy = label.y - yOf(own ? part : view.layer[i + 1]);
      const y = { ...part.encoding.y, value: yOf(part) + dy };
      const at = pixelOf(view.layer[i - 1]?.encoding?.x) ?? pixelOf(part.encoding.x);
      const x = own ? { value: label.flips ? at - 5 : Math.max(at + 5, 0) } : part.encoding.x;
      const mark = label.flips && own ? { ...part.mark, align: "right" } : part.mark;
      return { ...part, mark, encoding: { ...part.encoding, x, y } };
    });
    return { ...view, layer };
  };

  const movedBy = (part, dx, dy) => {
    const encoding = { ...part.encoding };
    for (const [name, by] of [
      ["x", dx],
      ["x2", dx],
      ["y", dy],
      ["y2", dy],
    ]) {
      const pixel = pixelOf(encoding[name]);
      if (pixel !== undefined) encoding[name] = { ...encoding[name], value: pixel + by };
    }
    return { ...part, encoding };
  };

  return { inLanes, isKey, lengthOf, reflowed, shifted, wrapped };
})();
