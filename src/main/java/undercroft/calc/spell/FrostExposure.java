package undercroft.calc.spell;

import java.util.OptionalLong;
import undercroft.calc.chill.Frost;
import undercroft.series.Track;

/**
 * What cold a lot's bottles have had and have now.
 *
 * @param now at the end of the time looked at
 * @param worst in all of it: what may have burst stays so when it has thawed
 * @param coldestCelsius the coldest the bottles were, °C
 * @param firstBelow when they first passed the freezing point, epoch second; empty when they never did
 * @param lastBelow the last instant they were below it; empty when they never were
 */
public record FrostExposure(
        Frost.State now, Frost.State worst, double coldestCelsius, OptionalLong firstBelow, OptionalLong lastBelow) {
    /**
     * Reads a track, its middle values.
     *
     * @param bottles temperature of the beer, °C
     * @param fromInclusive usually when it was capped
     * @param untilInclusive the instant looked at, not before {@code fromInclusive}; both are held to the track
     * @throws IllegalArgumentException when the time runs backwards
     */
    public static FrostExposure of(Frost frost, Track bottles, long fromInclusive, long untilInclusive) {
        if (untilInclusive < fromInclusive) {
            throw new IllegalArgumentException("time runs from " + fromInclusive + " to " + untilInclusive);
        }
        int first = bottles.indexAt(fromInclusive);
        int last = bottles.indexAt(untilInclusive);
        double coldest = Double.POSITIVE_INFINITY;
        OptionalLong firstBelow = OptionalLong.empty();
        OptionalLong lastBelow = OptionalLong.empty();
        for (int i = first; i <= last; i++) {
            coldest = Math.min(coldest, bottles.valueAt(i));
            if (frost.at(bottles.valueAt(i)) != Frost.State.NONE) {
                lastBelow = OptionalLong.of(bottles.timeAt(i));
                firstBelow = firstBelow.isPresent() ? firstBelow : lastBelow;
            }
        }
        return new FrostExposure(frost.at(bottles.valueAt(last)), frost.at(coldest), coldest, firstBelow, lastBelow);
    }
}
