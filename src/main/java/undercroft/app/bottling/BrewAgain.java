package undercroft.app.bottling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.app.form.Slug;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.Reading;
import undercroft.wording.QuantityFormat;

/** A plan of a bottling day from a batch that was bottled before, with how that one tasted beside what it aimed at. */
public record BrewAgain(Cellar cellar, Batch before, QuantityFormat words) {
    /** The batch to come, under a name of its own. */
    public Batch planned() {
        List<String> ids = cellar.batches().stream().map(Batch::id).toList();
        String name = words.of("bottling.again.name", before.name());
        FillingPlan plan = FirstPlan.of(before);
        return Batch.planned(Slug.of(name, "batch", ids), name, before.beer(), before.yeast(), plan)
                .withNotes(notes());
    }

    private String notes() {
        List<String> lines = new ArrayList<>();
        before.cappedAt()
                .ifPresent(capped -> lines.add(words.of(
                        "bottling.again.before",
                        before.name(),
                        words.day(capped.atZone(words.zone()).toLocalDate()))));
        before.priming()
                .targetVolumes()
                .ifPresent(target -> lines.add(words.of("bottling.again.target", words.volumes(target))));
        tasted().ifPresent(opened ->
                lines.add(words.of("bottling.again.tasted", words.messages().nameOf(opened.perceivedCarbonation()))));
        if (!before.notes().isBlank()) {
            lines.add(words.of("bottling.again.notes", before.notes().strip()));
        }
        return String.join("\n", lines);
    }

    private Optional<Reading.Opened> tasted() {
        return before.readings().stream()
                .filter(Reading.Opened.class::isInstance)
                .map(Reading.Opened.class::cast)
                .max(Comparator.comparing(Reading::at));
    }
}
