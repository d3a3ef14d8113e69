/** How many readings a chart takes to signal, on average. */
export interface AverageRunLength {
  /** The shift is there from the first reading on. */
  readonly zeroState: number;
  /**
   * The shift comes after the chart has run in control, without a false alarm, for so long that its
   * start is forgotten; counted from the shift.
   */
  readonly steadyState: number;
}
