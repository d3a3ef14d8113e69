/** A tank of a line. Material passes the tanks in their order. */
export interface LineTank {
  readonly name: string;
  /** Working volume, L, above 0. */
  readonly volumeL: number;
  /** Fed in proportion to the area, mL/m², at least 0; default 0. */
  readonly rateMlPerM2?: number;
  /** Fed whatever the area, mL/day, at least 0; default 0. 1 L/min is 1,440,000. */
  readonly feedMlPerDay?: number;
  /** Liquid the material takes on to the next tank, mL/m², at least 0. */
  readonly carryOverMlPerM2: number;
  /** Water lost to the air, mL/day, at least 0; default 0. */
  readonly evaporationMlPerDay?: number;
  /** Where the overflow goes: another tank of the line, or `"drain"` (default). */
  readonly overflowTo?: string;
}

/** What one component does in one tank; everything is 0 unless said. */
export interface ComponentInTank {
  readonly startGPerL?: number;
  readonly feedGPerL?: number;
  readonly releasedGPerM2?: number;
  readonly consumedGPerM2?: number;
  readonly lossPerDay?: number;
}

/** A component that is followed through a line. */
export interface LineComponent {
  readonly name: string;
  /** g/L in the liquid that enters the first tank with the material; default 0. */
  readonly enteringGPerL?: number;
  /** By name of the tank. */
  readonly inTanks: Readonly<Record<string, ComponentInTank>>;
}

/** Tanks in line, joined by carry-over and by overflows. */
export interface TankLine {
  readonly tanks: readonly LineTank[];
  readonly components: readonly LineComponent[];
  /** Liquid that the material brings into the first tank, mL/m², at least 0; default 0 (dry). */
  readonly enteringMlPerM2?: number;
}

/** Flows of one tank, L/day. */
export interface LineTankFlows {
  readonly name: string;
  readonly carryInL: number;
  readonly feedL: number;
  /** Overflow of other tanks that runs in. */
  readonly fromTanksL: number;
  readonly evaporationL: number;
  readonly carryOutL: number;
  /** What overflows; negative in a tank that is falling, by so much. */
  readonly overflowL: number;
  readonly overflowTo: string;
}
