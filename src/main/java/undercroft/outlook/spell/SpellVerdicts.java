package undercroft.outlook.spell;

import java.time.Instant;
import undercroft.calc.spell.Spell;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.SpellExposure;
import undercroft.quantity.Interval;

/** What a spell means for a lot, in words, with what to do first. */
record SpellVerdicts(Instant at, Wording words) {
    /** A verdict with how much it wants attention. */
    record Verdict(Alert alert, SpellReview.Advice advice, String words) {}

    Verdict of(Spell spell, LotOutlook lot, SpellExposure exposure, double shelfDays) {
        if (lot.left() == 0) {
            return new Verdict(Alert.CLEAR, SpellReview.Advice.GONE, "All gone since.");
        }
        Verdict bare = spell.kind() == Spell.Kind.COLD ? cold(spell) : warm(spell, lot, exposure, shelfDays);
        return spell.certain()
                ? bare
                : new Verdict(
                        spell.kind() == Spell.Kind.WARM ? bare.alert().or(Alert.WATCH) : bare.alert(),
                        bare.advice(),
                        bare.words() + " Readings are missing in this spell: it may have been "
                                + (spell.kind() == Spell.Kind.WARM ? "warmer." : "colder."));
    }

    private static Verdict cold(Spell spell) {
        return spell.peakCelsius() < 0
                ? new Verdict(
                        Alert.CLEAR,
                        SpellReview.Advice.LOOK_FOR_LIFTED_CAPS,
                        "May have come near freezing: look for lifted caps before moving it; frozen bottles burst.")
                : new Verdict(
                        Alert.CLEAR, SpellReview.Advice.AS_USUAL, "Cold only: a pause for the yeast, nothing lost.");
    }

    private Verdict warm(Spell spell, LotOutlook lot, SpellExposure exposure, double shelfDays) {
        Interval peak = exposure.peakBarGauge();
        String upTo = "(up to " + words.bar(peak.high()) + ")";
        String cost = " Cost " + Wording.number(Math.max(0, shelfDays), 0) + " keeping days.";
        String full = exposure.mayHaveBeenFull() ? " The beer may have filled the bottle to the cap." : "";
        if (exposure.hoursOverLimit() > 0 || exposure.mayHaveBeenFull()) {
            String over = exposure.hoursOverLimit() > 0
                    ? "May have been over its limit for " + hours(exposure.hoursOverLimit()) + " " + upTo + "."
                    : "Near its limit " + upTo + ".";
            boolean still = at.getEpochSecond() < spell.span().untilExclusive()
                    || lot.verdict().alert(Cause.Topic.PRESSURE) == Alert.ACT;
            return still
                    ? new Verdict(
                            Alert.ACT,
                            SpellReview.Advice.COOL_BEFORE_TOUCHING,
                            over + full + " Leave it in its closed box, cool the whole box, and only then touch it,"
                                    + " eyes and hands covered.")
                    : new Verdict(
                            Alert.ACT,
                            SpellReview.Advice.DRINK_FIRST,
                            over + full + " It is cooler now: handle it gently, eyes and hands covered, and drink it"
                                    + " first.");
        }
        if (peak.high() > lot.pressure().cautionBar()) {
            return new Verdict(
                    Alert.WATCH,
                    SpellReview.Advice.KEEP_COOLER,
                    "Near its limit " + upTo + " but not over; keep it cooler." + cost);
        }
        return new Verdict(Alert.CLEAR, SpellReview.Advice.AS_USUAL, "Well within its limit " + upTo + "." + cost);
    }

    private static String hours(double hours) {
        return hours < 0.95 ? "less than an hour" : Wording.number(hours, 0) + " h";
    }
}
