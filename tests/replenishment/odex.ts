import { createRequire } from "node:module";

// E. Hairer's extrapolation integrator ODEX, ported by C. Smith. The package ships its sources, which
// this project's compiler settings refuse, so only what is used of it is typed here.
interface OdexSolver {
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  solve(
    f: (t: number, y: readonly number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
  ): { readonly y: readonly number[]; readonly outcome: number };
}
interface OdexModule {
  readonly Solver: new (dimension: number) => OdexSolver;
  readonly Outcome: { readonly Converged: number };
}

const { Solver, Outcome } = createRequire(import.meta.url)("odex") as OdexModule;

/** y(to) of dy/dt = f(t, y), by an integrator that knows nothing of closed forms. */
export function integrateOde(
  f: (t: number, y: readonly number[]) => number[],
  from: number,
  start: readonly number[],
  to: number,
): readonly number[] {
  const solver = new Solver(start.length);
  solver.absoluteTolerance = 1e-13;
  solver.relativeTolerance = 1e-13;
  solver.maxSteps = 100_000;
  const { y, outcome } = solver.solve(f, from, start, to);
  if (outcome !== Outcome.Converged) throw new Error(`the integrator gave up (${outcome})`);
  return y;
}
