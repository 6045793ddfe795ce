package undercroft.calc.gas;

/**
 * How beer expands with warmth: as a mixture of water and alcohol. What extract adds is a few 1e-6 per K and is left out.
 *
 * <p>The mixture is the general formula of OIML R 22 (1975, International Alcoholometric Tables; −20 to 40 °C). Only its
 * ratio to its own water is used, on top of Kell's water, so that the warm end leans on an equation made for it; from 40 to
 * 60 °C the ratio is a continuation.
 */
public final class BeerDensity {
    private static final double ETHANOL_AT_20 = 789.24;
    private static final double[] AT_20 = {
        998.20123,
        -192.9769495,
        389.1238958,
        -1668.103923,
        13522.15441,
        -88292.78388,
        306287.4042,
        -613838.1234,
        747017.2998,
        -547846.1354,
        223446.0334,
        -39032.85426
    };
    private static final double[] WARMTH = {
        0, -0.20618513, -5.2682542e-3, 3.6130013e-5, -3.8957702e-7, 7.169354e-9, -9.9739231e-11
    };
    private static final double[][] CROSS = {
        {
            0,
            0.1693443461530087,
            -10.46914743455169,
            71.96353469546523,
            -704.7478054272792,
            3924.090430035045,
            -12101.64659068747,
            22486.46550400788,
            -26055.62982188164,
            18523.73922069467,
            -7420.201433430137,
            1285.617841998974
        },
        {
            0,
            -0.0119301300505701,
            0.2517399633803461,
            -2.170575700536993,
            13.53034988843029,
            -50.29988758547014,
            109.635566657757,
            -142.2753946421155,
            108.043594285623,
            -44.14153236817392,
            7.442971530188783
        },
        {
            0,
            -6.802995733503803e-4,
            1.876837790289664e-2,
            -0.2002561813734156,
            1.02299296671922,
            -2.895696483903638,
            4.810060584300675,
            -4.672147440794683,
            2.458043105903461,
            -0.5411227621436812
        },
        {0, 4.075376675622027e-6, -8.76305857347111e-6, 6.515031360099368e-6, -1.51578483698721e-6},
        {0, -2.788074354782409e-8, 1.345612883493354e-8}
    };

    private BeerDensity() {}

    /**
     * Density of water and alcohol without extract, kg/m³; use it in ratios between temperatures.
     *
     * @param celsius −5 to 60 °C
     * @param alcoholByWeightPercent grams of ethanol in 100 g, 0 to 25
     * @throws IllegalArgumentException outside these ranges
     */
    public static double kilogramsPerCubicMetre(double celsius, double alcoholByWeightPercent) {
        double share = Require.within("alcoholByWeightPercent", alcoholByWeightPercent, 0, 25) / 100;
        return WaterDensity.kilogramsPerCubicMetre(celsius) * mixture(share, celsius) / mixture(0, celsius);
    }

    /**
     * Grams of ethanol in 100 g from millilitres in 100 mL at 20 °C, for water and alcohol (OIML R 22: q = ρ(p) p /
     * 789.24). Extract makes beer up to 2 % denser, and its share by weight that much smaller.
     *
     * @param abvPercent 0 to 25 % by volume
     * @throws IllegalArgumentException outside that range
     */
    public static double alcoholByWeightPercent(double abvPercent) {
        double wanted = Require.within("abvPercent", abvPercent, 0, 25) / 100 * ETHANOL_AT_20;
        double share = wanted / AT_20[0];
        for (int i = 0; i < 30; i++) {
            share = wanted / polynomial(AT_20, share);
        }
        return 100 * share;
    }

    private static double mixture(double share, double celsius) {
        double d = celsius - 20;
        double cross = 0;
        for (int i = CROSS.length - 1; i >= 0; i--) {
            cross = (cross + polynomial(CROSS[i], share)) * d;
        }
        return polynomial(AT_20, share) + polynomial(WARMTH, d) + cross;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
