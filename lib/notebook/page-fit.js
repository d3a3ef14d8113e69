// Fits a Vega-Lite specification into a narrow window: narrower or stacked plots, titles, names and
// legends broken into lines. Part of the script of a page.

globalThis.wetsideFit = (() => {
  const { inLanes, isKey, lengthOf, reflowed, shifted, wrapped } = globalThis.wetsidePixels;
  const isObject = (value) => typeof value === "object" && value !== null && !Array.isArray(value);

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

  /** Side by side becomes one below the other. */
  const stacked = (view) => {
    const { hconcat, ...rest } = view;
    const copy = hconcat ? { ...rest, vconcat: hconcat } : { ...rest };
    if (copy.vconcat) copy.vconcat = copy.vconcat.map(stacked);
    if (copy.spec && copy.columns) copy.columns = 1;
    return copy;
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
        // Names stand in the middle of equal places: one that is wider than its place pushes others out.
        const longest = Math.max(0, ...words.map(lengthOf)) + 8;
        const crowded = longest * words.length > width;
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

  return { narrowed, plotWidth, stacked };
})();
