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

  const scaled = (view, factor) => {
    const copy = { ...view };
    for (const key of ["vconcat", "hconcat", "concat"]) {
      if (copy[key]) copy[key] = copy[key].map((part) => scaled(part, factor));
    }
    if (copy.spec) copy.spec = scaled(copy.spec, factor);
    if (typeof copy.width === "number") copy.width = Math.max(80, Math.floor(copy.width * factor));
    return copy;
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

  /** Titles broken into lines and legends into columns that fit. */
  const fitted = (view, available) => {
    const copy = { ...view };
    const width = typeof copy.width === "number" ? copy.width : available;
    if (copy.title && !isObject(copy.title)) copy.title = wrapped(copy.title, available - 20, 15);
    else if (isObject(copy.title)) {
      const { text, subtitle } = copy.title;
      copy.title = { ...copy.title, text: wrapped(text, available - 20, 15) };
      if (subtitle) copy.title.subtitle = wrapped(subtitle, available - 20, 12);
    }
    if (isObject(copy.encoding)) copy.encoding = fittedEncoding(copy.encoding, width, available);
    for (const key of ["layer", "vconcat", "hconcat", "concat"]) {
      if (Array.isArray(copy[key])) {
        copy[key] = copy[key].map((part) =>
          fitted(key === "layer" ? { width, ...part } : part, available),
        );
      }
    }
    if (Array.isArray(copy.layer)) copy.layer = copy.layer.map(({ width: _, ...part }) => part);
    if (isObject(copy.spec)) copy.spec = fitted(copy.spec, available);
    return copy;
  };

  const fittedEncoding = (encoding, width, available) => {
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
      if (isObject(copy.legend)) copy.legend = { ...copy.legend, columns };
      return [name, copy];
    });
    return Object.fromEntries(entries);
  };

  /** The specification with all plots together `factor` times as wide. */
  const narrowed = (specification, factor, available) => {
    const copy = fitted(scaled(specification, factor), available);
    const config = copy.config ?? {};
    const columns = Math.max(1, Math.floor(available / 150));
    const legend = { ...config.legend, columns, labelLimit: available - 60 };
    return { ...copy, config: { ...config, legend } };
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
      if (over > available / 10) await reduced(chart, available);
      else if (over > 0) setWidth(place, available);
    }
    figure.classList.add("is-live");
  };

  /** A figure laid out in fixed pixels: drawn smaller as long as it can be read, then scrolled. */
  const reduced = async (chart, available) => {
    await redraw(chart, chart.specification);
    setWidth(chart.place, Math.max(available, chart.drawnWidth * LEAST_SCALE));
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
