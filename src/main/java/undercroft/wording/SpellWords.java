package undercroft.wording;

import undercroft.outlook.Wording;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;

/** What a spell means for a lot, with what to do first. */
public record SpellWords(Wording words) {
    public String verdict(SpellReview spell, SpellImpact impact) {
        if (impact.advice() == SpellImpact.Advice.GONE) {
            return "All gone since.";
        }
        String bare = spell.warm() ? warm(impact) : cold(impact);
        return spell.certain()
                ? bare
                : bare + " Readings are missing in this spell: it may have been "
                        + (spell.warm() ? "warmer." : "colder.");
    }

    private static String cold(SpellImpact impact) {
        return impact.advice() == SpellImpact.Advice.LOOK_FOR_LIFTED_CAPS
                ? "May have come near freezing: look for lifted caps before moving it; frozen bottles burst."
                : "Cold only: a pause for the yeast, nothing lost.";
    }

    private String warm(SpellImpact impact) {
        String upTo = "(up to " + words.bar(impact.peakGaugeBar().high()) + ")";
        String cost = " Cost " + Wording.number(Math.max(0, impact.shelfDaysCost()), 0) + " keeping days.";
        return switch (impact.advice()) {
            case COOL_BEFORE_TOUCHING ->
                over(impact, upTo)
                        + " Leave it in its closed box, cool the whole box, and only then touch it, eyes and hands covered.";
            case DRINK_FIRST ->
                over(impact, upTo)
                        + " It is cooler now: handle it gently, eyes and hands covered, and drink it first.";
            case KEEP_COOLER -> "Near its limit " + upTo + " but not over; keep it cooler." + cost;
            default -> "Well within its limit " + upTo + "." + cost;
        };
    }

    private static String over(SpellImpact impact, String upTo) {
        String full = impact.exposure().mayHaveBeenFull() ? " The beer may have filled the bottle to the cap." : "";
        return (impact.hoursOverWorkingPressure() > 0
                        ? "May have been over its limit for " + hours(impact.hoursOverWorkingPressure()) + " " + upTo
                                + "."
                        : "Near its limit " + upTo + ".")
                + full;
    }

    private static String hours(double hours) {
        return hours < 0.95 ? "less than an hour" : Wording.number(hours, 0) + " h";
    }
}
