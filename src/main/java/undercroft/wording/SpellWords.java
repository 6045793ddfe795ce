package undercroft.wording;

import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;

/** What a spell means for a lot, with what to do first. */
public record SpellWords(ShelfWords words) {
    /** From here on, rounded, it was an hour. */
    private static final double AN_HOUR = 0.95;

    public String verdict(SpellReview spell, SpellImpact impact) {
        if (impact.advice() == SpellImpact.Advice.GONE) {
            return words.of("spell.gone");
        }
        String bare = spell.warm() ? warm(impact) : cold(impact);
        if (spell.certain()) {
            return bare;
        }
        return words.of(spell.warm() ? "spell.missing-warm" : "spell.missing-cold", bare);
    }

    private String cold(SpellImpact impact) {
        return words.of(impact.advice() == SpellImpact.Advice.LOOK_FOR_LIFTED_CAPS ? "spell.freezing" : "spell.cold");
    }

    private String warm(SpellImpact impact) {
        return switch (impact.advice()) {
            case COOL_BEFORE_TOUCHING -> words.of("spell.cool-first", over(impact));
            case OPEN_COLD -> words.of("spell.open-cold", over(impact));
            case DRINK_FIRST -> words.of("spell.drink-first", over(impact));
            case KEEP_COOLER -> words.of("spell.keep-cooler", upTo(impact), cost(impact));
            default -> words.of("spell.within", upTo(impact), cost(impact));
        };
    }

    private String over(SpellImpact impact) {
        String over = impact.hoursOverWorkingPressure() > 0
                ? words.of("spell.over", hours(impact.hoursOverWorkingPressure()), upTo(impact))
                : words.of("spell.near", upTo(impact));
        return impact.exposure().mayHaveBeenFull() ? words.of("spell.full", over) : over;
    }

    private String upTo(SpellImpact impact) {
        return words.format().barWorst(impact.peakGaugeBar().high());
    }

    private String cost(SpellImpact impact) {
        return words.of("spell.cost", Math.round(Math.max(0, impact.shelfDaysCost())));
    }

    private String hours(double hours) {
        return hours < AN_HOUR
                ? words.of("spell.under-an-hour")
                : words.of("spell.hours", words.format().numberUp(hours, 0));
    }
}
