package undercroft.plot;

import undercroft.series.Band;
import undercroft.series.TimeSeries;

/** Finds how far the data of a plot reach within a stretch of time, and from it the range of its axis. */
final class ValueReach {
    private static final double MARGIN = 0.06;

    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    private ValueReach() {}

    /** Range of the axis: fixed ends stay, others leave a margin; never below zero for data that are not. */
    static double[] of(Plot plot, long from, long until) {
        ValueReach reach = new ValueReach();
        plot.layers().forEach(layer -> reach.include(layer, from, until));
        return reach.range(plot.axis());
    }

    private double[] range(ValueAxis axis) {
        if (low > high) {
            low = Double.isNaN(axis.low()) ? 0 : axis.low();
            high = Double.isNaN(axis.high()) ? low + axis.smallestSpan() : axis.high();
        }
        double margin = Math.max((high - low) * MARGIN, (axis.smallestSpan() - (high - low)) / 2);
        double foot = low >= 0 ? Math.max(0, low - margin) : low - margin;
        double top = Math.max(high + margin, foot + axis.smallestSpan());
        foot = Double.isNaN(axis.low()) ? foot : axis.low();
        top = Double.isNaN(axis.high()) ? top : axis.high();
        if (top <= foot) {
            boolean fixedTop = !Double.isNaN(axis.high());
            foot = fixedTop ? top - axis.smallestSpan() : foot;
            top = fixedTop ? top : foot + axis.smallestSpan();
        }
        return new double[] {foot, top};
    }

    private void include(Layer layer, long from, long until) {
        if (layer instanceof BandLayer bandLayer) {
            include(bandLayer.band(), from, until);
        } else if (layer instanceof LineLayer line) {
            include(line.series(), from, until);
        } else if (layer instanceof StripLayer strip) {
            include(0);
            include(strip.steps(), from, Math.min(until, strip.until()));
        } else if (layer instanceof ThresholdLayer threshold) {
            include(threshold.value());
        } else if (layer instanceof PointLayer pointLayer) {
            for (PointLayer.Point point : pointLayer.points()) {
                if (point.epochSecond() >= from && point.epochSecond() <= until) {
                    include(point.low());
                    include(point.high());
                }
            }
        }
    }

    private void include(TimeSeries series, long from, long until) {
        int first = Math.max(0, series.indexAtOrBefore(from));
        int last = Math.min(series.size() - 1, series.indexAtOrBefore(until - 1) + 1);
        if (first <= last) {
            include(series.valueAt(series.lowestBetween(first, last)));
            include(series.valueAt(series.highestBetween(first, last)));
        }
    }

    private void include(Band band, long from, long until) {
        int last = Math.min(band.size() - 1, band.indexAtOrBefore(until - 1) + 1);
        for (int i = Math.max(0, band.indexAtOrBefore(from)); i <= last; i++) {
            include(band.lowAt(i));
            include(band.medianAt(i));
            include(band.highAt(i));
        }
    }

    private void include(double value) {
        if (Double.isFinite(value)) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
    }
}
