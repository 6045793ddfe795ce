package undercroft.app.bottling;

import java.util.Optional;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.Checklist;
import undercroft.calc.priming.UnfinishedFermentation;
import undercroft.outlook.lot.Alert;
import undercroft.wording.QuantityFormat;

/** What the list of pages says about each: how far it is, in a few words. */
public record Rail(PlanForm form, QuantityFormat words) {
    /** A few words, and how urgent they are. */
    public record State(Alert alert, String words) {
        static final State NOTHING = new State(Alert.CLEAR, "");

        static State of(String words) {
            return new State(Alert.CLEAR, words);
        }
    }

    public State state(BottlingPage screen) {
        Optional<BottlingDay> day = form.dayProperty().get();
        if (day.isEmpty()) {
            return missing(screen);
        }
        return state(screen, day.get());
    }

    private State missing(BottlingPage screen) {
        int bottles = form.bottles().list().size();
        return screen == BottlingPage.BOTTLES && bottles == 0
                ? new State(Alert.WATCH, words.of("bottling.rail.no-bottles"))
                : State.NOTHING;
    }

    private State state(BottlingPage screen, BottlingDay day) {
        double target = day.plan().filling().wish().targetVolumes();
        return switch (screen) {
            case BEER ->
                State.of(words.of("bottling.rail.beer", words.litres(day.order().bottleLitres())));
            case BOTTLES -> bottles(day);
            case CARBONATION -> carbonation(day, target);
            case SUGAR ->
                State.of(
                        day.sugar().dose().notNeeded()
                                ? words.of("bottling.rail.no-sugar")
                                : words.weighed(day.sugar().weighGrams()));
            case GO_OR_WAIT -> verdict(day.unfinished().verdict());
            case CLEAN ->
                State.of(words.messages()
                        .name(day.plan().filling().wash().sanitiser())
                        .replaceAll(" \\(.*", ""));
            case THE_DAY -> list(Checklist.of(day));
            case CAP -> day.mayGoOn() ? State.NOTHING : new State(Alert.ACT, words.of("bottling.rail.not-yet"));
        };
    }

    private State bottles(BottlingDay day) {
        boolean refused =
                day.order().rows().stream().anyMatch(row -> row.refusal().isPresent());
        return new State(
                refused ? Alert.ACT : Alert.CLEAR,
                words.of("bottling.rail.bottles", day.order().filled()));
    }

    private State carbonation(BottlingDay day, double target) {
        boolean over = day.weakest().filter(weakest -> weakest.marginBar() < 0).isPresent();
        String limit = day.weakest()
                .map(weakest -> words.barLimit(weakest.limits().workingPressureBar()))
                .orElse("");
        return over
                ? new State(Alert.ACT, words.of("bottling.rail.over", limit))
                : State.of(words.statedVolumes(target));
    }

    private State verdict(UnfinishedFermentation.Verdict verdict) {
        return switch (verdict) {
            case GO -> State.of(words.of("bottling.verdict.go"));
            case WAIT -> new State(Alert.ACT, words.of("bottling.verdict.wait"));
            case UNKNOWN -> new State(Alert.WATCH, words.of("bottling.verdict.unknown"));
        };
    }

    private State list(Checklist list) {
        return State.of(words.of("bottling.rail.done", list.done(), list.steps().size()));
    }
}
