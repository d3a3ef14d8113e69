import type { BathTank, TankDay } from "wetside/replenishment";

/** An illustrative developer: every flow and every kind of loss at once. */
export const developer: BathTank = Object.freeze({
  volumeL: 20,
  rateMlPerM2: 600,
  carryInMlPerM2: 30,
  carryOutMlPerM2: 70,
  evaporationMlPerDay: 250,
  topUp: "water",
  components: Object.freeze([
    Object.freeze({
      name: "developing agent",
      replenisherGPerL: 5.2,
      startGPerL: 4.5,
      consumedGPerM2: 0.9,
      lossPerDay: 0.01,
    }),
    Object.freeze({
      name: "bromide",
      replenisherGPerL: 0.4,
      startGPerL: 1.3,
      carryInGPerL: 0.05,
      releasedGPerM2: 0.5,
    }),
    Object.freeze({ name: "alkali", replenisherGPerL: 36, startGPerL: 33, consumedGPerM2: 0.3 }),
    Object.freeze({
      name: "sulfite",
      replenisherGPerL: 4.5,
      startGPerL: 4,
      consumedGPerM2: 0.05,
      lossPerDay: 0.03,
    }),
  ]),
});

/** So many days from 2026-03-02, a Monday, with a load that changes and rests. */
export function unevenDays(count: number): readonly TankDay[] {
  return Array.from({ length: count }, (_, i) => ({
    date: new Date(Date.UTC(2026, 2, 2 + i)).toISOString().slice(0, 10),
    areaM2: i % 7 === 6 ? 0 : 1.5 + ((i * 37) % 11) / 2,
  }));
}
