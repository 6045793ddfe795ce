package undercroft.calc.gas;

/**
 * A closed bottle at rest at one temperature.
 *
 * @param gaugeBar pressure above the outside air, bar; below zero in a purged bottle without CO2
 * @param carbonDioxideBar pressure of the CO2 in the headspace, bar; in a liquid-full bottle that of the CO2 in solution
 * @param airBar pressure of nitrogen and oxygen, likewise
 * @param waterVapourBar likewise; the three add up to the absolute pressure unless the bottle is liquid-full
 * @param headspaceMillilitres room left for gas at this temperature and pressure; 0 without a gas cap
 * @param dissolvedGramsPerLitre CO2 in solution, per litre of beer as it is now
 * @param liquidFull true when the beer fills the bottle (once the air has dissolved), so that it presses on the glass
 *     itself, by 2 to 4 bar per K
 */
public record BottleState(
        double gaugeBar,
        double carbonDioxideBar,
        double airBar,
        double waterVapourBar,
        double headspaceMillilitres,
        double dissolvedGramsPerLitre,
        boolean liquidFull) {}
