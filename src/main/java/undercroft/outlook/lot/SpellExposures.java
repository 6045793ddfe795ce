package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import undercroft.calc.conditioning.PressureForecast;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.spell.Spell;
import undercroft.cellar.Lot;
import undercroft.cellar.Stay;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.series.Band;
import undercroft.series.Span;
import undercroft.series.Track;

/** Follows a lot through the spells of the places it stood in. */
record SpellExposures(Lot lot, Track bottles, Map<String, PlaceClimate> places, Instant at) {
    /** Air whose oxygen the yeast has taken: the nitrogen that is left. */
    private static final double NITROGEN = 0.79;

    /**
     * The course of pressure in the strongest bottle and what it came from.
     *
     * @param strongest the CO2 its priming makes over the average bottle's
     */
    record Pressures(
            PressureForecast forecast,
            double strongest,
            Band trajectory,
            double workingPressureBar,
            ClosedBottle bottle,
            double beerFactor,
            Interval carbonationVolumes) {}

    List<SpellExposure> of(Pressures pressures) {
        List<SpellExposure> exposures = new ArrayList<>();
        for (int s = 0; s < lot.stays().size(); s++) {
            Stay stay = lot.stays().get(s);
            long begins = stay.from().getEpochSecond();
            long ends = s + 1 == lot.stays().size()
                    ? Long.MAX_VALUE
                    : lot.stays().get(s + 1).from().getEpochSecond();
            PlaceClimate place = places.get(stay.placeId());
            for (Spell spell : place.spells()) {
                long from = Math.max(begins, spell.span().fromInclusive());
                long until = Math.min(
                        Math.min(ends, at.getEpochSecond()), spell.span().untilExclusive());
                if (from < until && lot.leftAt(Instant.ofEpochSecond(from)) > 0) {
                    exposures.add(exposure(place, spell, new Span(from, until), pressures));
                }
            }
        }
        return List.copyOf(exposures);
    }

    private SpellExposure exposure(PlaceClimate place, Spell spell, Span stay, Pressures pressures) {
        Band trajectory = pressures.trajectory();
        int first = Math.max(0, trajectory.indexAtOrBefore(stay.fromInclusive()));
        int last = first;
        while (last + 1 < trajectory.size() && trajectory.timeAt(last) < stay.untilExclusive()) {
            last++;
        }
        Interval peak = LotCalculator.peak(trajectory, first, last + 1);
        double seconds = pressures
                .forecast()
                .secondsOver(
                        bottles,
                        trajectory,
                        pressures.strongest(),
                        stay.fromInclusive(),
                        stay.untilExclusive(),
                        pressures.workingPressureBar());
        return new SpellExposure(
                place.place().id(),
                spell.span(),
                stay,
                peak,
                seconds / 3600,
                PressureForecast.memory(trajectory, first + 1),
                PressureForecast.memory(trajectory, last + 1),
                mayBeFull(stay, pressures));
    }

    private boolean mayBeFull(Span stay, Pressures pressures) {
        double warmest = bottles.highest(stay.fromInclusive(), stay.untilExclusive());
        for (double volumes : new double[] {
            pressures.carbonationVolumes().low(), pressures.carbonationVolumes().high()
        }) {
            double grams =
                    Math.min(ClosedBottle.MOST_GRAMS_PER_LITRE, volumes * Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME);
            OptionalDouble full = pressures.bottle().liquidFullCelsius(grams, pressures.beerFactor(), NITROGEN);
            if (full.isPresent() && warmest >= full.getAsDouble()) {
                return true;
            }
        }
        return false;
    }
}
