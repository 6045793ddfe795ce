package undercroft.outlook.lot;

import java.util.List;
import java.util.Optional;

/**
 * How much a lot or a batch wants attention at an instant, and why. The one place an alert comes from: whatever shows or
 * says one reads it here.
 *
 * @param causes the gravest first; none when there is nothing to say
 */
public record Verdict(List<Cause> causes) {
    public Verdict {
        causes = causes.stream().distinct().sorted(Cause.GRAVEST_FIRST).toList();
    }

    /** Of a batch: all that is to be said of its lots. */
    static Verdict ofAll(List<LotOutlook> lots) {
        return new Verdict(
                lots.stream().flatMap(lot -> lot.verdict().causes().stream()).toList());
    }

    public Alert alert() {
        return causes.stream().map(Cause::alert).reduce(Alert.CLEAR, Alert::or);
    }

    /** How much attention one topic wants. */
    public Alert alert(Cause.Topic topic) {
        return causes.stream()
                .filter(cause -> cause.kind().topic() == topic)
                .map(Cause::alert)
                .reduce(Alert.CLEAR, Alert::or);
    }

    /** What is to be said first. */
    public Optional<Cause> leading() {
        return causes.stream().findFirst();
    }

    /** The gravest cause about a topic. */
    public Optional<Cause> leading(Cause.Topic topic) {
        return causes.stream().filter(cause -> cause.kind().topic() == topic).findFirst();
    }

    public boolean has(Cause.Kind kind) {
        return causes.stream().anyMatch(cause -> cause.kind() == kind);
    }

    /** How much attention bottles that may burst want, whether by pressure or by frost. */
    public Alert danger() {
        return alert(Cause.Topic.PRESSURE).or(alert(Cause.Topic.FROST));
    }
}
