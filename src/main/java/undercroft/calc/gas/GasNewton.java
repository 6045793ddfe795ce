package undercroft.calc.gas;

/**
 * The fast path of {@link ClosedBottle}: the equations of {@link GasBalance} solved by Newton's method in two unknowns, CO2
 * pressure p and total pressure P. One method on purpose: nothing is allocated and everything stays in registers.
 */
final class GasNewton {
    private static final double MOLAR_LITRES = ClosedBottle.LITRES_PER_DISSOLVED_MOLE;

    /** What a step may leave undone: the second-order terms of the step just taken, bar. */
    private static final double ENOUGH_BAR = 1e-5;

    private GasNewton() {}

    /** Total pressure, bar, or NaN when the headspace is too small for this method; arguments checked by the caller. */
    static double totalBar(
            ClosedBottle bottle,
            double celsius,
            double totalGramsPerLitre,
            double beerFactor,
            double airAmount,
            double airTrapped,
            double guessTotalBar) {
        double[] t = bottle.warmth().table();
        int m = WarmthTerms.middleRow(celsius);
        int lo = m - WarmthTerms.COUNT;
        int hi = m + WarmthTerms.COUNT;
        double s = WarmthTerms.fromMiddle(celsius, m);
        double wl = 0.5 * s * (s - 1);
        double wm = 1 - s * s;
        double wh = 0.5 * s * (s + 1);
        double perRt =
                wl * t[lo + WarmthTerms.PER_RT] + wm * t[m + WarmthTerms.PER_RT] + wh * t[hi + WarmthTerms.PER_RT];
        double henry = beerFactor
                * (wl * t[lo + WarmthTerms.HENRY] + wm * t[m + WarmthTerms.HENRY] + wh * t[hi + WarmthTerms.HENRY]);
        double virial =
                wl * t[lo + WarmthTerms.VIRIAL] + wm * t[m + WarmthTerms.VIRIAL] + wh * t[hi + WarmthTerms.VIRIAL];
        double vapour =
                wl * t[lo + WarmthTerms.VAPOUR] + wm * t[m + WarmthTerms.VAPOUR] + wh * t[hi + WarmthTerms.VAPOUR];
        double soak = 1 - airTrapped;
        double soakN = soak
                * (wl * t[lo + WarmthTerms.NITROGEN]
                        + wm * t[m + WarmthTerms.NITROGEN]
                        + wh * t[hi + WarmthTerms.NITROGEN]);
        double soakO = soak
                * (wl * t[lo + WarmthTerms.OXYGEN] + wm * t[m + WarmthTerms.OXYGEN] + wh * t[hi + WarmthTerms.OXYGEN]);
        double squeeze =
                wl * t[lo + WarmthTerms.SQUEEZE] + wm * t[m + WarmthTerms.SQUEEZE] + wh * t[hi + WarmthTerms.SQUEEZE];
        double fill = bottle.fillLitres();
        double still = fill
                * (wl * t[lo + WarmthTerms.EXPANSION]
                        + wm * t[m + WarmthTerms.EXPANSION]
                        + wh * t[hi + WarmthTerms.EXPANSION]);

        double glass = bottle.glassLitresAt(celsius);
        double atmosphere = bottle.atmosphereBar();
        double glassSlope = glass * bottle.swellingPerBar();
        double stillSlope = still * squeeze;
        double stillAtZero =
                still + stillSlope * Atmosphere.SEA_LEVEL_BAR - MOLAR_LITRES * bottle.dissolvedWhenCappedMoles();
        double glassAtZero = glass - glassSlope * atmosphere;
        double pressing = MOLAR_LITRES * perRt;
        double n = fill * totalGramsPerLitre * (1 / CarbonDioxideSolubility.MOLAR_MASS);
        double nitrogen = bottle.airMoles() * Math.min(airAmount, DissolvedAir.NITROGEN_SHARE);
        double oxygen = bottle.airMoles() * Math.max(0, airAmount - DissolvedAir.NITROGEN_SHARE);

        double total = guessTotalBar > vapour ? guessTotalBar : Double.NaN;
        double p = n / (henry * still + perRt * (glass - still));
        if (Double.isNaN(total)) {
            total = p + vapour + airAmount;
        }
        p *= 1 + (pressing - virial) * p * 0.93;
        for (int i = 0; i < 12; i++) {
            double e = henry * exp(virial * p - pressing * (total - Atmosphere.SEA_LEVEL_BAR));
            double c = p * e;
            double cp = e * (1 + virial * p);
            double cP = -pressing * c;
            double q = 1 / (1 - MOLAR_LITRES * c);
            double beer = (stillAtZero - stillSlope * total) * q;
            double swell = beer * q * MOLAR_LITRES;
            double beerP = swell * cP - stillSlope * q;
            double beerp = swell * cp;
            double room = glassAtZero + glassSlope * total - beer;
            if (!(room > 0)) {
                return Double.NaN;
            }
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
            double f2 = p + pn + pO + vapour - total;
            double air = pn * dn + pO * dO;
            double soaked = pn * dn * soakN + pO * dO * soakO;
            double f2p = 1 + air * perRt * beerp - soaked * beerp;
            double f2P = -1 - air * perRt * roomP - soaked * beerP;
            double det = 1 / (f1p * f2P - f1P * f2p);
            double stepp = (f1P * f2 - f2P * f1) * det;
            double stepP = (f2p * f1 - f1p * f2) * det;
            p += stepp;
            total += stepP;
            double roomStep = roomP * stepP - beerp * stepp;
            double crowding = roomStep * perRt * dn;
            double left = (pn + pO) * crowding * crowding
                    + 0.01 * stepp * stepp
                    + 1e-5 * stepP * stepP
                    + Math.abs(stepp * roomStep) / fill;
            if (left < ENOUGH_BAR && Math.abs(roomStep) < 0.5 * room && p > -1e-9) {
                return total;
            }
            if (!(p >= 0)) {
                p = 0;
            }
        }
        return Double.NaN;
    }

    /** e^x; the series is exact to 1e-10 for the small exponents of ordinary pressures. */
    private static double exp(double x) {
        if (Math.abs(x) > 0.1) {
            return Math.exp(x);
        }
        return 1 + x * (1 + x * (0.5 + x * (1 / 6.0 + x * (1 / 24.0 + x * (1 / 120.0 + x * (1 / 720.0))))));
    }
}
