package undercroft.outlook.serving;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.calc.chill.ChillPlan;
import undercroft.calc.chill.QuickChill;
import undercroft.catalogue.CoolingMedium;
import undercroft.cellar.Cellar;
import undercroft.cellar.Serving;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;

/** What stands in the way of a pour, each in a sentence with what to do. */
record ServingConcerns(
        Wording words,
        Cellar cellar,
        Instant at,
        Serving serving,
        BatchOutlook batch,
        LotOutlook lot,
        ChillPlan plan,
        Chilling chilling) {
    /** Below this the chance to find it ready is told as a concern (assumption). */
    private static final double CERTAIN_ENOUGH = 0.9;

    List<Concern> all(Optional<Instant> chillFrom, double probability) {
        List<Concern> concerns = new ArrayList<>();
        if (lot.verdict().alert(Cause.Topic.PRESSURE) == Alert.ACT) {
            concerns.add(new Concern(
                    Concern.Kind.PRESSURE,
                    Alert.ACT,
                    "These bottles may be over what they bear: cool them in their closed box before you touch one."));
        }
        readiness(concerns, probability);
        sameBottles(concerns);
        if (chillFrom.isEmpty()) {
            concerns.add(tooLate());
        } else if (!plan.coldEnough()) {
            concerns.add(new Concern(
                    Concern.Kind.TOO_WARM_A_PLACE,
                    Alert.WATCH,
                    "The " + cellar.coldName(serving) + " has " + words.celsius(chilling.coldCelsius())
                            + ", warmer than the " + words.celsius(chilling.wantedCelsius())
                            + " wanted in the glass: choose a colder place, or ice water."));
        }
        if (serving.coolingMedium() == CoolingMedium.FREEZER) {
            concerns.add(freezer());
        }
        concerns.sort(Comparator.comparing(Concern::alert).reversed());
        return concerns;
    }

    private void readiness(List<Concern> concerns, double probability) {
        if (lot.ready().median().isEmpty()) {
            concerns.add(new Concern(
                    Concern.Kind.NEVER_READY,
                    Alert.WATCH,
                    "It will not be ready in " + lot.place().name() + " within a year, and the cold stops it: move it"
                            + " somewhere warmer first, or choose another batch."));
        } else if (probability < CERTAIN_ENOUGH) {
            concerns.add(new Concern(
                    Concern.Kind.MAY_NOT_BE_READY,
                    Alert.WATCH,
                    lot.ready().median().get().isAfter(at)
                            ? "It is " + Wording.percent(probability)
                                    + " likely ready when it goes into the cold, which stops it; expect it around "
                                    + words.day(lot.ready().median().get()) + "."
                            : "It is " + Wording.percent(probability)
                                    + " likely ready: open one beforehand to be sure."));
        }
    }

    private void sameBottles(List<Concern> concerns) {
        int promised = cellar.servings().stream()
                .filter(each -> each.batchId().equals(batch.id()) && each.at().isAfter(at))
                .mapToInt(Serving::bottles)
                .sum();
        if (promised > batch.bottlesLeft()) {
            boolean alone = promised == serving.bottles();
            concerns.add(new Concern(
                    Concern.Kind.SAME_BOTTLES,
                    Alert.ACT,
                    (alone ? "It wants " : "The pours of this batch want ") + Wording.bottles(promised)
                            + " together, and " + batch.bottlesLeft() + (batch.bottlesLeft() == 1 ? " is" : " are")
                            + " left: lower one, or take another batch."));
        }
    }

    private Concern tooLate() {
        QuickChill quick = QuickChill.of(
                serving.at().getEpochSecond(),
                chilling.bottle(),
                serving.bottles(),
                lot.temperature().nowCelsius(),
                chilling.wantedCelsius());
        Instant dip = Instant.ofEpochSecond(quick.putInEpochSecond());
        String minutes = Math.max(1, Math.round(quick.minutes())) + " min";
        String way = dip.isBefore(at)
                ? "put it into ice water now; it wants " + minutes + " there"
                : minutes + " in ice water, from " + words.moment(dip) + ", is the fastest safe way";
        return new Concern(
                Concern.Kind.TOO_LATE,
                Alert.WATCH,
                "There is no time left to get cold and clear: " + way
                        + ". Pour gently, it will have stirred up some yeast. Not the freezer, unless an alarm rings after "
                        + Math.round(quick.freezerMinutes()) + " min: beer that freezes bursts its bottle.");
    }

    private Concern freezer() {
        double alarm = QuickChill.of(
                        serving.at().getEpochSecond(),
                        chilling.bottle(),
                        serving.bottles(),
                        lot.temperature().nowCelsius(),
                        chilling.wantedCelsius())
                .freezerMinutes();
        String minutes = Math.round(alarm) + " min";
        return plan.freezerRisk()
                ? new Concern(
                        Concern.Kind.FREEZER,
                        Alert.ACT,
                        "They would have to stay in the freezer longer than the " + minutes
                                + " that are safe; beer that freezes bursts its bottle. Use ice water.")
                : new Concern(
                        Concern.Kind.FREEZER,
                        Alert.WATCH,
                        "Set an alarm and fetch them after " + minutes
                                + " at the latest: beer that freezes bursts its bottle. Ice water is safer and faster.");
    }
}
