// Runs in a page made from a notebook: draws its figures anew to fit the window, with hints under
// the pointer, and folds the code. Without it the page still shows everything but Plotly figures.

(() => {
  const vega = globalThis.vega;
  const vegaLite = globalThis.vegaLite;
  const Plotly = globalThis.Plotly;
  /** Narrowest plot, in pixels, that can still be read. */
  const LEAST_PLOT = 170;

  /** Smallest scale at which the labels of a figure can still be read. */
  const LEAST_SCALE = 0.75;

  const dataOf = (figure) => {
    const found = document.querySelector(`script[data-for="${figure.id}"]`);
    return found === null ? undefined : JSON.parse(found.textContent);
  };
  const isObject = (value) => typeof value === "object" && value !== null && !Array.isArray(value);

  // --- fitting a Vega-Lite specification -------------------------------------------------------

  /** The views directly inside a view. */
  const partsOf = (view) => view.vconcat ?? view.hconcat ?? view.concat ?? [];

  /** Width of all plots side by side, or undefined if one has no width in pixels. */
  const plotWidth = (view) => {
    if (view.vconcat || view.hconcat || view.concat) {
      const widths = partsOf(view).map(plotWidth);
      if (widths.some((width) => width === undefined)) return undefined;
      return view.hconcat ? widths.reduce((a, b) => a + b, 0) : Math.max(...widths);
    }
    if (view.spec) {
      const one = plotWidth(view.spec);
      const columns = view.columns ?? 1;
      return one === undefined ? undefined : one * columns;
    }
    return typeof view.width === "number" ? view.width : undefined;
  };

  const scaled = (view, factor, available) => {
    const copy = { ...view };
    for (const key of ["vconcat", "hconcat", "concat"]) {
      if (copy[key]) copy[key] = copy[key].map((part) => scaled(part, factor, available));
    }
    if (copy.spec) copy.spec = scaled(copy.spec, factor, available);
    if (typeof copy.width !== "number") return copy;
    const width = Math.max(80, Math.floor(copy.width * factor));
    if (isKey(copy)) return reflowed(copy, width, Math.max(width, available * 0.74));
    return { ...inLanes(shifted(copy, copy.width, width), width), width };
  };

  // --- what was placed in pixels ---------------------------------------------------------------

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

  /** Side by side becomes one below the other. */
  const stacked = (view) => {
    const { hconcat, ...rest } = view;
    const copy = hconcat ? { ...rest, vconcat: hconcat } : { ...rest };
    if (copy.vconcat) copy.vconcat = copy.vconcat.map(stacked);
    if (copy.spec && copy.columns) copy.columns = 1;
    return copy;
  };

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

  /** The different words of a field anywhere in the data of a specification. */
  const wordsOf = (specification, field) => {
    const found = new Set();
    const look = (view) => {
      for (const row of view.data?.values ?? []) {
        if (typeof row?.[field] === "string") found.add(row[field]);
      }
      for (const key of ["layer", "vconcat", "hconcat", "concat"]) (view[key] ?? []).forEach(look);
      if (isObject(view.spec)) look(view.spec);
    };
    look(specification);
    return [...found];
  };

  /** Labels of an axis or legend that names things, broken into lines; undefined if all fit. */
  const brokenLabels = (words, width) => {
    const broken = words.map((word) => [word, wrapped(word, width, 11)]);
    if (broken.every(([, lines]) => !Array.isArray(lines))) return undefined;
    return `${JSON.stringify(Object.fromEntries(broken))}[datum.label] || datum.label`;
  };

  /** Titles and long labels broken into lines and legends into columns that fit. */
  const fitted = (view, available, whole = view) => {
    const copy = { ...view };
    const width = typeof copy.width === "number" ? copy.width : available;
    if (copy.title && !isObject(copy.title)) copy.title = wrapped(copy.title, available - 20, 15);
    else if (isObject(copy.title)) {
      const { text, subtitle } = copy.title;
      copy.title = { ...copy.title, text: wrapped(text, available - 20, 15) };
      if (subtitle) copy.title.subtitle = wrapped(subtitle, available - 20, 12);
    }
    if (isObject(copy.encoding))
      copy.encoding = fittedEncoding(copy.encoding, width, available, whole);
    for (const key of ["layer", "vconcat", "hconcat", "concat"]) {
      if (Array.isArray(copy[key])) {
        copy[key] = copy[key].map((part) =>
          fitted(key === "layer" ? { width, ...part } : part, available, whole),
        );
      }
    }
    if (Array.isArray(copy.layer)) copy.layer = copy.layer.map(({ width: _, ...part }) => part);
    if (isObject(copy.height) && copy.height.step < labelHeight(view, available, whole)) {
      copy.height = { ...copy.height, step: labelHeight(view, available, whole) };
    }
    if (isObject(copy.spec)) copy.spec = fitted(copy.spec, available, whole);
    return copy;
  };

  /** Height of the tallest broken label of the names down the side. */
  const labelHeight = (view, available, whole) => {
    const encodings = [view, ...(view.layer ?? [])].map(({ encoding }) => encoding ?? {});
    if (encodings.some(({ yOffset }) => yOffset)) return 0;
    const fields = new Set(encodings.map(({ y }) => y?.field).filter(Boolean));
    const lines = [...fields].flatMap((field) =>
      wordsOf(whole, field).map((word) => [wrapped(word, available * SIDE, 11)].flat().length),
    );
    return 14 * Math.max(0, ...lines) + 4;
  };

  /** Share of a narrow window that names down the side may take. */
  const SIDE = 0.27;
  const LEGENDS = ["color", "fill", "stroke", "shape", "strokeDash", "opacity"];
  const fittedEncoding = (encoding, width, available, whole) => {
    const columns = Math.max(1, Math.floor(available / 150));
    const entries = Object.entries(encoding).map(([name, channel]) => {
      if (!isObject(channel)) return [name, channel];
      const copy = { ...channel };
      if (name === "x") {
        if (copy.title) copy.title = wrapped(copy.title, width, 12);
        if (isObject(copy.axis) && copy.axis.title) {
          copy.axis = { ...copy.axis, title: wrapped(copy.axis.title, width, 12) };
        }
      }
      const named = ["nominal", "ordinal"].includes(copy.type) && typeof copy.field === "string";
      if (!named) {
        if (isObject(copy.legend)) copy.legend = { ...copy.legend, columns };
        return [name, copy];
      }
      const words = wordsOf(whole, copy.field);
      if (name === "y" && copy.axis !== null) {
        const title = copy.axis?.title ?? copy.title;
        // Names speak for themselves; the room is for the plot.
        const untitled = /\(no unit\)$/.test(title) ? { title: null } : {};
        copy.axis = { ...copy.axis, ...untitled, labelOverlap: false };
        const labelExpr = brokenLabels(words, available * SIDE);
        if (labelExpr && !copy.axis.labelExpr) copy.axis.labelExpr = labelExpr;
      } else if (name === "x" && copy.axis !== null) {
        const crowded = words.reduce((sum, word) => sum + lengthOf(word) + 8, 0) > width;
        if (crowded) copy.axis = { ...copy.axis, labelAngle: -35, labelOverlap: false };
      } else if (LEGENDS.includes(name) && copy.legend !== null) {
        // A legend begins where its plot does, right of the axis.
        const room = available * 0.7;
        const longest = Math.max(1, ...words.map(lengthOf)) + 40;
        const most = Math.max(1, Math.min(columns, Math.floor(room / longest)));
        const labelExpr = brokenLabels(words, room - 40);
        copy.legend = { ...copy.legend, columns: most };
        if (labelExpr && !copy.legend.labelExpr) copy.legend.labelExpr = labelExpr;
      }
      return [name, copy];
    });
    return Object.fromEntries(entries);
  };

  /** The specification with all plots together `factor` times as wide. */
  const narrowed = (specification, factor, available) => {
    const copy = fitted(scaled(specification, factor, available), available);
    const config = copy.config ?? {};
    const columns = Math.max(1, Math.floor(available / 150));
    const legend = { ...config.legend, columns, labelLimit: available - 60 };
    const axisX = { ...config.axisX, labelSeparation: 5 };
    return { ...copy, config: { ...config, legend, axisX } };
  };

  // --- times as they were written, whatever the time zone of the reader -------------------------

  const LOCAL_TIME = /^\d{4}-\d\d-\d\d[T ]\d\d:\d\d(:\d\d(\.\d+)?)?$/;
  const sameTime = (value) => {
    if (typeof value === "string")
      return LOCAL_TIME.test(value) ? `${value.replace(" ", "T")}Z` : value;
    if (Array.isArray(value)) return value.map(sameTime);
    if (!isObject(value)) return value;
    const copy = Object.fromEntries(
      Object.entries(value).map(([key, each]) => [key, sameTime(each)]),
    );
    if (copy.type === "temporal" && (copy.field || copy.datum)) {
      copy.scale = copy.scale === null ? null : { type: "utc", ...copy.scale };
    }
    if (typeof copy.timeUnit === "string" && !copy.timeUnit.startsWith("utc")) {
      copy.timeUnit = `utc${copy.timeUnit}`;
    }
    return copy;
  };

  // --- hints under the pointer -----------------------------------------------------------------

  const hint = document.createElement("div");
  hint.className = "hint";
  hint.hidden = true;
  document.body.append(hint);
  const showHint = (_handler, event, _item, value) => {
    const text = isObject(value)
      ? Object.entries(value)
          .map(([name, each]) => `${name}: ${each}`)
          .join("\n")
      : String(value ?? "");
    hint.hidden = text === "";
    if (hint.hidden) return;
    hint.textContent = text;
    const { width, height } = hint.getBoundingClientRect();
    const left = Math.min(event.clientX + 14, innerWidth - width - 8);
    const below = event.clientY + 18;
    hint.style.left = `${Math.max(8, left)}px`;
    hint.style.top = `${below + height > innerHeight ? event.clientY - height - 12 : below}px`;
  };

  const withHints = (specification) => {
    const config = { ...specification.config };
    for (const mark of ["point", "circle", "square", "bar"]) {
      config[mark] = { tooltip: true, ...config[mark] };
    }
    return { ...specification, config };
  };

  // --- drawing ---------------------------------------------------------------------------------

  const draw = async (specification, place) => {
    const { spec } = vegaLite.compile(specification, { logger: vega.logger(vega.Error) });
    const view = new vega.View(vega.parse(spec), {
      renderer: "svg",
      container: place,
      hover: true,
      logLevel: vega.Error,
    });
    view.tooltip(showHint);
    await view.runAsync();
    return view;
  };
  const widthOf = (place) => place.querySelector("svg")?.getBoundingClientRect().width ?? 0;

  /** Draws a chart as wide as its figure allows; tries again if axes or legends took more room. */
  const drawChart = async (chart) => {
    const { figure, place } = chart;
    const available = Math.floor(figure.clientWidth);
    if (available === 0 || available === chart.width) return;
    chart.width = available;
    let specification = chart.specification;
    let full = plotWidth(specification);
    if (full === undefined || chart.drawnWidth <= available) {
      await redraw(chart, specification);
    } else {
      let rest = chart.drawnWidth - full;
      if ((available - rest) / full < 0.6 && JSON.stringify(specification).includes('"hconcat"')) {
        specification = stacked(specification);
        const together = full;
        full = plotWidth(specification);
        rest = Math.min(rest, (rest * full) / together + 20);
      }
      let target = available - rest;
      let over = 0;
      for (let attempt = 0; attempt < 4; attempt++) {
        const factor = Math.max(target, Math.min(full, LEAST_PLOT)) / full;
        await redraw(chart, narrowed(specification, Math.min(1, factor), available));
        over = widthOf(place) - available;
        if (over <= 0 || target <= LEAST_PLOT) break;
        target -= over + 2;
      }
      if (over > available / LEAST_SCALE - available) await reduced(chart, available);
      else if (over > 0) setWidth(place, available);
    }
    figure.classList.add("is-live");
  };

  /** A figure laid out in fixed pixels: drawn smaller as long as it can be read, then scrolled. */
  const reduced = async (chart, available) => {
    await redraw(chart, chart.specification);
    setWidth(chart.place, Math.max(available, widthOf(chart.place) * LEAST_SCALE));
  };

  const setWidth = (place, width) => {
    const svg = place.querySelector("svg");
    svg.style.width = `${width}px`;
    svg.style.height = "auto";
  };

  const redraw = async (chart, specification) => {
    chart.view?.finalize();
    chart.place.replaceChildren();
    chart.view = await draw(specification, chart.place);
  };

  const drawPlot = async (figure) => {
    const place = figure.querySelector(".live");
    const { data, layout } = dataOf(figure);
    const options = { responsive: true, displaylogo: false };
    const { width: _, ...free } = layout;
    if (figure.clientWidth < 500) {
      // The caption says the title; in a narrow window the plot needs the room.
      free.title = { text: "" };
      free.margin = { ...free.margin, l: 48, r: 8 };
    }
    await Plotly.newPlot(place, data, free, options);
    figure.classList.add("is-live");
    const picture = document.createElement("img");
    picture.className = "printed";
    picture.alt = "";
    picture.src = await Plotly.toImage(place, {
      format: "png",
      width: 700,
      height: layout.height ?? 420,
      scale: 2,
    });
    figure.prepend(picture);
  };

  const whenNear = (elements, act) => {
    const observer = new IntersectionObserver(
      (entries) => {
        for (const { isIntersecting, target } of entries) {
          if (!isIntersecting) continue;
          observer.unobserve(target);
          act(target);
        }
      },
      { rootMargin: "800px" },
    );
    for (const element of elements) observer.observe(element);
  };

  if (vega && vegaLite) {
    const charts = new Map();
    const resized = new ResizeObserver((entries) => {
      for (const { target } of entries) {
        const chart = charts.get(target);
        clearTimeout(chart.timer);
        chart.timer = setTimeout(() => drawChart(chart), chart.width === 0 ? 0 : 150);
      }
    });
    whenNear(document.querySelectorAll("figure.chart"), (figure) => {
      const drawn = figure.querySelector(".drawn svg");
      charts.set(figure, {
        figure,
        place: figure.querySelector(".live"),
        specification: withHints(sameTime(dataOf(figure))),
        drawnWidth: Number(drawn?.getAttribute("width") ?? Number.POSITIVE_INFINITY),
        width: 0,
        timer: 0,
      });
      resized.observe(figure);
    });
  }
  if (Plotly) whenNear(document.querySelectorAll("figure.plot"), drawPlot);

  // --- folding the code ------------------------------------------------------------------------

  if (document.querySelector(".source")) {
    const tools = document.createElement("div");
    tools.className = "tools";
    const button = document.createElement("button");
    button.type = "button";
    const label = () => {
      const hidden = document.body.classList.contains("without-code");
      button.textContent = hidden ? "Show the code" : "Hide the code";
      button.setAttribute("aria-pressed", String(hidden));
    };
    button.addEventListener("click", () => {
      document.body.classList.toggle("without-code");
      label();
    });
    label();
    tools.append(button);
    document.querySelector("main").before(tools);
  }
  if (matchMedia("(max-width: 78rem)").matches) {
    document.querySelector(".contents details")?.removeAttribute("open");
  }
})();
