package undercroft.calc.gas;

/**
 * The gauge pressures of many possible bottles that share a temperature, for calculations that follow a thousand of them
 * through a year. Same physics as {@link ClosedBottle#gaugeBar}, but the terms of the temperature are made once for all,
 * and one Newton step runs over the whole array in straight-line arithmetic, which overlaps from member to member (some 30 ns
 * each, against 80 one by one); the few members it does not settle are asked one by one.
 *
 * <p>Holds scratch space: use one per thread.
 */
public final class GaugeSweep {
    private static final double ENOUGH_BAR = 1e-5;
    private static final double MOLAR_LITRES = ClosedBottle.LITRES_PER_DISSOLVED_MOLE;

    private final ClosedBottle bottle;
    private final double[] row = new double[WarmthTerms.COUNT];
    private final double[] left;
    private final double[] total;

    private GaugeSweep(ClosedBottle bottle, int members) {
        this.bottle = bottle;
        this.left = new double[members];
        this.total = new double[members];
    }

    /** A sweep over a number of members, 1 or more. */
    public static GaugeSweep of(ClosedBottle bottle, int members) {
        if (members < 1) {
            throw new IllegalArgumentException("members is " + members + ", not 1 or more");
        }
        return new GaugeSweep(bottle, members);
    }

    /**
     * Replaces gauge pressures by those at a temperature, within 1e-4 bar of {@link ClosedBottle#at}; allocates nothing
     * unless a headspace has all but vanished.
     *
     * @param celsius −5 to 60 °C
     * @param totalGramsPerLitre of each member; this and the next three as in {@link ClosedBottle#at}, not changed
     * @param gaugeBar on entry what each member had the moment before, or NaN; on return what it has, bar
     * @throws IllegalArgumentException when an array has another length than the sweep, or a value is outside its range
     */
    public void gaugesBar(
            double celsius,
            double[] totalGramsPerLitre,
            double[] beerFactor,
            double[] airAmount,
            double[] airTrapped,
            double[] gaugeBar) {
        if (totalGramsPerLitre.length != left.length
                || beerFactor.length != left.length
                || airAmount.length != left.length
                || airTrapped.length != left.length
                || gaugeBar.length != left.length) {
            throw new IllegalArgumentException("not " + left.length + " members");
        }
        Require.celsius(celsius);
        bottle.warmth().read(celsius, row);
        step(celsius, totalGramsPerLitre, beerFactor, airAmount, airTrapped, gaugeBar);
        double atmosphere = bottle.atmosphereBar();
        for (int i = 0; i < left.length; i++) {
            ClosedBottle.check(celsius, totalGramsPerLitre[i], beerFactor[i], airAmount[i], airTrapped[i]);
            if (left[i] < ENOUGH_BAR) {
                gaugeBar[i] = total[i] - atmosphere;
            } else {
                gaugeBar[i] = bottle.gaugeBar(
                        celsius, totalGramsPerLitre[i], beerFactor[i], airAmount[i], airTrapped[i], gaugeBar[i]);
            }
        }
    }

    /** One step of {@link GasNewton} for every member; what it leaves undone is NaN or large where it must not be trusted. */
    private void step(
            double celsius,
            double[] grams,
            double[] beerFactor,
            double[] airAmount,
            double[] airTrapped,
            double[] gaugeBar) {
        double perRt = row[WarmthTerms.PER_RT];
        double henryWater = row[WarmthTerms.HENRY];
        double virial = row[WarmthTerms.VIRIAL];
        double vapour = row[WarmthTerms.VAPOUR];
        double nitrogenSoaks = row[WarmthTerms.NITROGEN];
        double oxygenSoaks = row[WarmthTerms.OXYGEN];
        double still = bottle.fillLitres() * row[WarmthTerms.EXPANSION];
        double stillSlope = still * row[WarmthTerms.SQUEEZE];
        double stillAtZero =
                still + stillSlope * Atmosphere.SEA_LEVEL_BAR - MOLAR_LITRES * bottle.dissolvedWhenCappedMoles();
        double glass = bottle.glassLitresAt(celsius);
        double glassSlope = glass * ClosedBottle.GLASS_SWELLING_PER_BAR;
        double atmosphere = bottle.atmosphereBar();
        double glassAtZero = glass - glassSlope * atmosphere;
        double pressing = MOLAR_LITRES * perRt;
        double molesPerGram = bottle.fillLitres() / CarbonDioxideSolubility.MOLAR_MASS;
        double perFill = 1 / bottle.fillLitres();
        double airMoles = bottle.airMoles();
        double emptyPerRt = perRt * (glass - still);
        double[] out = total;
        double[] undone = left;
        for (int i = 0; i < out.length; i++) {
            double pTotal = gaugeBar[i] + atmosphere;
            double n = molesPerGram * grams[i];
            double henry = henryWater * beerFactor[i];
            double soak = 1 - airTrapped[i];
            double nitrogen = airMoles * Math.min(airAmount[i], DissolvedAir.NITROGEN_SHARE);
            double oxygen = airMoles * airAmount[i] - nitrogen;
            double soakN = soak * nitrogenSoaks;
            double soakO = soak * oxygenSoaks;
            double p = n / (henry * still + emptyPerRt);
            p *= 1 + (pressing - virial) * p * 0.93;
            double x = virial * p - pressing * (pTotal - Atmosphere.SEA_LEVEL_BAR);
            double e = henry * (1 + x * (1 + x * (0.5 + x * (1 / 6.0 + x * (1 / 24.0 + x * (1 / 120.0 + x / 720))))));
            double c = p * e;
            double cp = e * (1 + virial * p);
            double cP = -pressing * c;
            double q = 1 / (1 - MOLAR_LITRES * c);
            double beer = (stillAtZero - stillSlope * pTotal) * q;
            double swell = beer * q * MOLAR_LITRES;
            double beerP = swell * cP - stillSlope * q;
            double beerp = swell * cp;
            double room = glassAtZero + glassSlope * pTotal - beer;
            double roomP = glassSlope - beerP;
            double z = 1 / (1 + virial * p);
            double gas = p * perRt * z;
            double f1 = gas * room + c * beer - n;
            double f1p = perRt * z * z * room + (c - gas) * beerp + cp * beer;
            double f1P = gas * roomP + cP * beer + c * beerP;
            double dn = 1 / (room * perRt + soakN * beer);
            double dO = 1 / (room * perRt + soakO * beer);
            double pn = nitrogen * dn;
            double pO = oxygen * dO;
            double f2 = p + pn + pO + vapour - pTotal;
            double air = pn * dn + pO * dO;
            double soaked = pn * dn * soakN + pO * dO * soakO;
            double f2p = 1 + air * perRt * beerp - soaked * beerp;
            double f2P = -1 - air * perRt * roomP - soaked * beerP;
            double det = 1 / (f1p * f2P - f1P * f2p);
            double stepp = (f1P * f2 - f2P * f1) * det;
            double stepP = (f2p * f1 - f1p * f2) * det;
            double roomStep = roomP * stepP - beerp * stepp;
            double crowding = roomStep * perRt * dn;
            double share = roomStep / room;
            out[i] = pTotal + stepP;
            double undoneBar = (pn + pO) * crowding * crowding
                    + 0.01 * stepp * stepp
                    + 1e-5 * stepP * stepP
                    + Math.abs(stepp * roomStep) * perFill
                    + 1e-4 * share * share;
            undone[i] = room > 0 ? undoneBar : Double.POSITIVE_INFINITY;
        }
    }
}
