package undercroft.calc.gas;

import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Finds the pressure in a bottle by bracketing: slow and safe, also with next to no headspace. Volumes in litres, amounts
 * in mol, pressures in bar absolute.
 *
 * <p>For a trial pressure the volumes of glass and beer are known, the CO2 then divides between gas and beer in one way, and
 * the sum of the partial pressures falls as the trial pressure rises; so there is one root, above the pressure at which the
 * beer with all CO2 in it would just fill the bottle. If the gas cannot hold its own at that pressure the bottle is
 * liquid-full.
 */
final class GasBalance {
    private final ClosedBottle bottle;
    private final double[] terms;
    private final double beerFactor;
    private final double dioxideMoles;
    private final double nitrogenMoles;
    private final double oxygenMoles;
    private final double airDissolving;
    private final double molarVolumePerRt;
    private final double glassLitres;

    GasBalance(
            ClosedBottle bottle,
            double celsius,
            double totalGramsPerLitre,
            double beerFactor,
            double airAmount,
            double airTrapped) {
        this.bottle = bottle;
        this.terms = bottle.warmth().at(celsius);
        this.beerFactor = beerFactor;
        this.dioxideMoles = bottle.fillLitres() * totalGramsPerLitre / CarbonDioxideSolubility.MOLAR_MASS;
        this.nitrogenMoles = bottle.airMoles() * Math.min(airAmount, DissolvedAir.NITROGEN_SHARE);
        this.oxygenMoles = bottle.airMoles() * Math.max(0, airAmount - DissolvedAir.NITROGEN_SHARE);
        this.airDissolving = 1 - airTrapped;
        this.molarVolumePerRt = ClosedBottle.LITRES_PER_DISSOLVED_MOLE * terms[WarmthTerms.PER_RT];
        this.glassLitres = bottle.glassLitresAt(celsius);
    }

    BottleState state() {
        double full = fullBar();
        boolean liquidFull = excessWhenFull() <= 0;
        double lowest = Math.max(full, terms[WarmthTerms.VAPOUR]);
        if (excess(lowest, airDissolving) <= 0) {
            return describe(lowest, liquidFull);
        }
        double highest = lowest + 1;
        while (excess(highest, airDissolving) > 0) {
            highest = lowest + 2 * (highest - lowest);
        }
        double total =
                new BrentSolver(1e-14, 1e-12, 1e-15).solve(200, bar -> excess(bar, airDissolving), lowest, highest);
        return describe(total, liquidFull);
    }

    /** By how much the gas would outdo the liquid at its bubble point, bar; negative once the bottle is liquid-full. */
    double excessWhenFull() {
        double full = fullBar();
        return full <= terms[WarmthTerms.VAPOUR] ? terms[WarmthTerms.VAPOUR] - full : excess(full, 1);
    }

    private BottleState describe(double totalBar, boolean liquidFull) {
        double dioxide = dioxideBar(totalBar);
        double dissolved = dissolved(dioxide, totalBar);
        double beer = beerLitres(totalBar, dissolved);
        double room = Math.max(0, glassLitres(totalBar) - beer);
        return new BottleState(
                totalBar - bottle.atmosphereBar(),
                dioxide,
                airBar(room, beer, airDissolving),
                terms[WarmthTerms.VAPOUR],
                room * 1000,
                dissolved * CarbonDioxideSolubility.MOLAR_MASS,
                liquidFull);
    }

    private double excess(double totalBar, double dissolving) {
        double dioxide = dioxideBar(totalBar);
        double beer = beerLitres(totalBar, dissolved(dioxide, totalBar));
        double room = glassLitres(totalBar) - beer;
        return dioxide + airBar(room, beer, dissolving) + terms[WarmthTerms.VAPOUR] - totalBar;
    }

    /** The pressure at which beer with all the CO2 in it fills the bottle, where both volumes are linear in pressure. */
    private double fullBar() {
        double beer = bottle.fillLitres() * terms[WarmthTerms.EXPANSION];
        double squeeze = beer * terms[WarmthTerms.SQUEEZE];
        double swelling = ClosedBottle.LITRES_PER_DISSOLVED_MOLE * (dioxideMoles - bottle.dissolvedWhenCappedMoles());
        double glassSwelling = glassLitres * bottle.swellingPerBar();
        double excess = beer
                + squeeze * Atmosphere.SEA_LEVEL_BAR
                + swelling
                - glassLitres
                + glassSwelling * bottle.atmosphereBar();
        return excess / (squeeze + glassSwelling);
    }

    private double glassLitres(double totalBar) {
        return glassLitres * (1 + bottle.swellingPerBar() * (totalBar - bottle.atmosphereBar()));
    }

    /** Volume of the beer; what it has dissolved counts per litre of that volume, hence the division. */
    private double beerLitres(double totalBar, double dissolvedMolesPerLitre) {
        double still = bottle.fillLitres()
                * terms[WarmthTerms.EXPANSION]
                * (1 - terms[WarmthTerms.SQUEEZE] * (totalBar - Atmosphere.SEA_LEVEL_BAR));
        return (still - ClosedBottle.LITRES_PER_DISSOLVED_MOLE * bottle.dissolvedWhenCappedMoles())
                / (1 - ClosedBottle.LITRES_PER_DISSOLVED_MOLE * dissolvedMolesPerLitre);
    }

    private double dissolved(double dioxideBar, double totalBar) {
        return beerFactor
                * terms[WarmthTerms.HENRY]
                * dioxideBar
                * Math.exp(terms[WarmthTerms.VIRIAL] * dioxideBar
                        - molarVolumePerRt * (totalBar - Atmosphere.SEA_LEVEL_BAR));
    }

    private double airBar(double roomLitres, double beerLitres, double dissolving) {
        double room = Math.max(roomLitres, 1e-15) * terms[WarmthTerms.PER_RT];
        double soaking = dissolving * beerLitres;
        return nitrogenMoles / (room + terms[WarmthTerms.NITROGEN] * soaking)
                + oxygenMoles / (room + terms[WarmthTerms.OXYGEN] * soaking);
    }

    /** The CO2 pressure that places all the CO2, at a given total pressure. Newton with a numerical guard, to 1e-15. */
    private double dioxideBar(double totalBar) {
        double glass = glassLitres(totalBar);
        double bar = dioxideMoles / (beerFactor * terms[WarmthTerms.HENRY] * bottle.fillLitres());
        for (int i = 0; i < 60; i++) {
            double dissolved = dissolved(bar, totalBar);
            double beer = beerLitres(totalBar, dissolved);
            double compress = 1 + terms[WarmthTerms.VIRIAL] * bar;
            double gasPerLitre = bar * terms[WarmthTerms.PER_RT] / compress;
            double room = glass - beer;
            double missing = dioxideMoles - gasPerLitre * room - dissolved * beer;
            double dissolvedSlope =
                    bar > 0 ? dissolved * (1 / bar + terms[WarmthTerms.VIRIAL]) : beerFactor * terms[WarmthTerms.HENRY];
            double beerSlope = beer
                    * ClosedBottle.LITRES_PER_DISSOLVED_MOLE
                    * dissolvedSlope
                    / (1 - ClosedBottle.LITRES_PER_DISSOLVED_MOLE * dissolved);
            double slope = terms[WarmthTerms.PER_RT] / (compress * compress) * room
                    - gasPerLitre * beerSlope
                    + dissolvedSlope * beer
                    + dissolved * beerSlope;
            double next = Math.max(0, bar + missing / slope);
            if (Math.abs(next - bar) <= 1e-15 * next) {
                return next;
            }
            bar = next;
        }
        return bar;
    }
}
