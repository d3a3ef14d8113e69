// Runs in a page made from a notebook: draws its figures anew to fit the window, with hints under
// the pointer, and folds the code. Without it the page still shows everything but Plotly figures.

(() => {
  const vega = globalThis.vega;
  const vegaLite = globalThis.vegaLite;
  const Plotly = globalThis.Plotly;
  const { narrowed, plotWidth, stacked } = globalThis.wetsideFit;
  /** Narrowest plot, in pixels, that can still be read. */
  const LEAST_PLOT = 170;

  /** Smallest scale at which the labels of a figure can still be read. */
  const LEAST_SCALE = 0.75;

  const dataOf = (figure) => {
    const found = document.querySelector(`script[data-for="${figure.id}"]`);
    return found === null ? undefined : JSON.parse(found.textContent);
  };
  const isObject = (value) => typeof value === "object" && value !== null && !Array.isArray(value);

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
      // An axis whose title has two lines takes the room it needs.
      for (const name of Object.keys(free).filter((each) => each.startsWith("yaxis"))) {
        free[name] = { ...free[name], automargin: true };
      }
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
  if (Plotly) {
    const waiting = new Set(document.querySelectorAll("figure.plot"));
    const drawOnce = async (figure) => {
      if (waiting.delete(figure)) await drawPlot(figure);
    };
    whenNear(waiting, drawOnce);
    // One that nobody scrolls to is drawn when there is nothing else to do, so that it prints.
    const whenIdle = globalThis.requestIdleCallback ?? ((act) => setTimeout(act, 200));
    const drawNext = async () => {
      const [next] = waiting;
      if (next === undefined) return;
      await drawOnce(next);
      whenIdle(drawNext);
    };
    addEventListener("load", () => whenIdle(drawNext));
  }

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
