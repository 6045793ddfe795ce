package undercroft.calc.light;

/** Values at evenly spaced wavelengths, linear between them and zero outside. */
final class Spectrum {
    private final double startNanometres;
    private final double stepNanometres;
    private final double[] values;

    Spectrum(double startNanometres, double stepNanometres, double[] values) {
        this.startNanometres = startNanometres;
        this.stepNanometres = stepNanometres;
        this.values = values.clone();
    }

    double at(double nanometres) {
        double position = (nanometres - startNanometres) / stepNanometres;
        int last = values.length - 1;
        if (!(position >= 0 && position <= last)) {
            return 0;
        }
        int before = Math.min((int) position, last - 1);
        double share = position - before;
        return values[before] * (1 - share) + values[before + 1] * share;
    }
}
