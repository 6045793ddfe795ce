package undercroft.calc.conditioning;

import undercroft.calc.learning.LearnedPrior;
import undercroft.calc.learning.Trait;
import undercroft.calc.learning.TraitLikelihood;
import undercroft.calc.numeric.QuasiNormals;

/**
 * What a batch's deviates may be before it is read: independent standard normals, or what earlier batches taught of some of them.
 * Immutable.
 */
final class MemberPrior {
    /** For somebody with no history. */
    static final MemberPrior GENERAL = new MemberPrior(null);

    /** Where a member keeps the traits; the gauge's is that of the first instrument. */
    private static final int[] PLACES = places();

    /** Null for the general one. */
    private final LearnedPrior learned;

    private MemberPrior(LearnedPrior learned) {
        this.learned = learned;
    }

    static MemberPrior of(LearnedPrior learned) {
        return new MemberPrior(learned);
    }

    private static int[] places() {
        int[] places = new int[Trait.COUNT - 1];
        places[Trait.RATE.place()] = EnsembleParameters.RATE;
        places[Trait.LAG.place()] = EnsembleParameters.LAG;
        places[Trait.SATURATION.place()] = EnsembleParameters.SATURATION;
        places[Trait.DOSE.place()] = EnsembleParameters.DOSE;
        places[Trait.AIR.place()] = EnsembleParameters.AIR_TRAPPED;
        places[Trait.PLACE.place()] = EnsembleParameters.TEMPERATURE;
        return places;
    }

    boolean isGeneral() {
        return learned == null;
    }

    /** Members spread evenly over what is possible; not to be changed. */
    double[][] points(int members, Offsets offsets) {
        if (isGeneral() && offsets.equals(Offsets.NONE)) {
            return EnsembleParameters.deviates(members);
        }
        double[][] points = QuasiNormals.points(members, offsets.dimensions());
        if (!isGeneral()) {
            for (int i = 0; i < points.length; i++) {
                double[] traits = traits(points[i], offsets);
                learned.shape(i, traits);
                setTraits(points[i], offsets, traits);
            }
        }
        return points;
    }

    /** Log of the probability density of a member's deviates. */
    double logDensity(double[] z, Offsets offsets) {
        double square = 0;
        for (double each : z) {
            square += each * each;
        }
        double general = -0.5 * (square + z.length * Math.log(2 * Math.PI));
        if (isGeneral()) {
            return general;
        }
        double[] traits = traits(z, offsets);
        double ofTraits = 0;
        for (double each : traits) {
            ofTraits += each * each;
        }
        return general + 0.5 * (ofTraits + traits.length * Math.log(2 * Math.PI)) + learned.logDensity(traits);
    }

    /** What weighted members say of the traits; they must be weighed under the general prior. */
    static TraitLikelihood likelihood(double[][] points, double[] weights, Offsets offsets) {
        double[][] traits = new double[points.length][];
        for (int i = 0; i < points.length; i++) {
            traits[i] = traits(points[i], offsets);
        }
        return TraitLikelihood.of(traits, weights);
    }

    private static double[] traits(double[] z, Offsets offsets) {
        boolean gauged = offsets.instruments() > 0;
        double[] traits = new double[gauged ? Trait.COUNT : PLACES.length];
        for (int t = 0; t < PLACES.length; t++) {
            traits[t] = z[PLACES[t]];
        }
        if (gauged) {
            traits[Trait.GAUGE.place()] = z[offsets.instrument(0)];
        }
        return traits;
    }

    private static void setTraits(double[] z, Offsets offsets, double[] traits) {
        for (int t = 0; t < PLACES.length; t++) {
            z[PLACES[t]] = traits[t];
        }
        if (traits.length > PLACES.length) {
            z[offsets.instrument(0)] = traits[Trait.GAUGE.place()];
        }
    }

    /** A member that is the median in all but the traits of the clock. */
    static double[] ofClock(double[] traits) {
        double[] z = new double[EnsembleParameters.DIMENSIONS];
        z[EnsembleParameters.RATE] = traits[Trait.RATE.place()];
        z[EnsembleParameters.LAG] = traits[Trait.LAG.place()];
        z[EnsembleParameters.SATURATION] = traits[Trait.SATURATION.place()];
        return z;
    }
}
