package undercroft.calc.conditioning;

import undercroft.calc.gas.LimitTemperatures;
import undercroft.calc.gas.PressureLimits;
import undercroft.quantity.Interval;
import undercroft.series.Band;
import undercroft.series.Track;

/** The range of two forecasts, about the higher of their medians, at each instant by itself. */
record WorsePressure(PressureForecast one, PressureForecast other) implements PressureForecast {
    @Override
    public Interval at(int instant, double celsius, double spreadKelvin) {
        return higher(one.at(instant, celsius, spreadKelvin), other.at(instant, celsius, spreadKelvin));
    }

    @Override
    public Interval strongestAt(int instant, double celsius, double spreadKelvin, double factor) {
        return higher(
                one.strongestAt(instant, celsius, spreadKelvin, factor),
                other.strongestAt(instant, celsius, spreadKelvin, factor));
    }

    @Override
    public Interval finished(double celsius) {
        return higher(one.finished(celsius), other.finished(celsius));
    }

    @Override
    public LimitTemperatures limitTemperatures(double factor, PressureLimits limits) {
        return one.limitTemperatures(factor, limits).orLower(other.limitTemperatures(factor, limits));
    }

    @Override
    public double probabilityOver(int instant, double celsius, double spreadKelvin, double factor, double bar) {
        return Math.max(
                one.probabilityOver(instant, celsius, spreadKelvin, factor, bar),
                other.probabilityOver(instant, celsius, spreadKelvin, factor, bar));
    }

    @Override
    public Band trajectory(Track bottle, double factor) {
        return one.trajectory(bottle, factor).orHigher(other.trajectory(bottle, factor));
    }

    @Override
    public double secondsOver(
            Track bottle,
            Band trajectory,
            double factor,
            long fromInclusive,
            long untilExclusive,
            double workingPressureBar) {
        return Math.max(
                one.secondsOver(bottle, trajectory, factor, fromInclusive, untilExclusive, workingPressureBar),
                other.secondsOver(bottle, trajectory, factor, fromInclusive, untilExclusive, workingPressureBar));
    }

    private static Interval higher(Interval one, Interval other) {
        return Interval.of(
                Math.min(one.low(), other.low()),
                Math.max(one.median(), other.median()),
                Math.max(one.high(), other.high()));
    }
}
