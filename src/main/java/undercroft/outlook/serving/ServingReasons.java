package undercroft.outlook.serving;

import java.time.Instant;
import java.util.Optional;
import undercroft.calc.chill.ChillPlan;
import undercroft.cellar.Cellar;
import undercroft.cellar.Serving;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.LotOutlook;

/** Why a pour goes into the cold when it does, in words. */
record ServingReasons(
        Wording words,
        Cellar cellar,
        Serving serving,
        LotOutlook lot,
        ChillPlan plan,
        Chilling chilling,
        Instant takeOut) {
    String sentence(boolean there, Optional<Instant> chillFrom, double probability) {
        String readiness = probability >= 0.5 ? "" : "; it may not be ready by then";
        if (there) {
            return "already in the cold since " + words.day(chillFrom.orElseThrow()) + takeOutWords() + readiness;
        }
        if (chillFrom.isEmpty()) {
            return "too late to be cold and clear; cool it in ice water and pour gently, leaving the sediment"
                    + readiness;
        }
        return serving.coolingMedium().isGoodForResting() ? rested() + readiness : quick() + readiness;
    }

    private String rested() {
        return hours(plan.coolingMinutes() / 60) + " to cool from " + words.celsius(chilling.fromCelsius()) + " to "
                + words.celsius(chilling.coldCelsius() + 1) + " in the "
                + cellar.coldName(serving) + ", then " + hours(plan.clearingHours()) + " upright to clear"
                + takeOutWords();
    }

    private String quick() {
        return Math.round(plan.coolingMinutes()) + " min from " + words.celsius(chilling.fromCelsius()) + " to "
                + words.celsius(plan.bottleCelsius()) + " in "
                + serving.coolingMedium().label()
                + "; it has no time to clear, so carry it upright and pour gently";
    }

    private String takeOutWords() {
        return plan.warmingMinutes() < 3
                ? ""
                : "; out of the cold at " + words.moment(takeOut) + " (" + Math.round(plan.warmingMinutes())
                        + " min before)";
    }

    private static String hours(double hours) {
        return hours < 1.5 ? Math.round(hours * 60) + " min" : Math.round(hours) + " h";
    }
}
