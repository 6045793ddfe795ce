package undercroft.command;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.BottlingPlan;
import undercroft.bottling.Capping;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Listed;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Mass;
import undercroft.quantity.Volume;
import undercroft.report.Answer;
import undercroft.session.change.CapBatch;
import undercroft.session.change.CellarChange;
import undercroft.wording.ShelfWords;

@Command
final class CapCommand extends ChangeCommand {
    @Option(names = "--place", required = true)
    private String place;

    @Option(names = "--cover", defaultValue = "closed-box")
    private String cover;

    @Option(names = "--filled", defaultValue = "not-told")
    private String filled;

    @Option(names = "--bottles")
    private String bottles;

    @Option(names = "--sugar")
    private String sugar;

    @Option(names = "--beer")
    private String beer;

    @Option(names = "--all-the-same")
    private boolean allTheSame;

    CapCommand(Console console) {
        super(console);
    }

    @Override
    CellarChange change(Cellar cellar, Batch batch) {
        if (batch.cappedAt().isPresent()) {
            throw new InvalidInput("batch", "command.fault.capped-already", batch.name());
        }
        Instant when = happened(cellar);
        Place stands = Listed.find(cellar.places(), place, "--place");
        BottlingDay day = BottlingDay.of(BottlingPlan.from(cellar, batch, LocalDate.ofInstant(when, cellar.zone())));
        Capping.Done planned =
                Capping.Done.asPlanned(day, when, stands.id(), Listed.find(Cover.class, cover, "--cover"));
        Capping.Done done = new Capping.Done(
                planned.cappedAt(),
                planned.placeId(),
                planned.cover(),
                Listed.find(FillingMethod.class, filled, "--filled"),
                bottles == null ? planned.counts() : counts(planned.counts().size()),
                beer == null
                        ? planned.primedLitres()
                        : Typed.read("--beer", beer, Volume::parse).litres(),
                sugar == null
                        ? planned.sugarGrams()
                        : Typed.read("--sugar", sugar, Mass::parse).grams());
        return new CapBatch(
                batch.id(),
                day,
                done,
                List.of(),
                allTheSame,
                console().clock().instant(),
                console().messages());
    }

    /** One count for each kind of bottle that was set out, in the order of the plan. */
    private List<Integer> counts(int kinds) {
        String[] parts = bottles.split(",", -1);
        if (parts.length != kinds
                || !Arrays.stream(parts).allMatch(part -> part.strip().matches("\\d{1,4}"))) {
            throw new InvalidInput("--bottles", "command.fault.counts", bottles, kinds);
        }
        return Arrays.stream(parts).map(part -> Integer.valueOf(part.strip())).toList();
    }

    @Override
    void say(Answer answer, ShelfWords after, Batch batch) {
        int capped = batch.leftAt(after.at());
        answer.put("bottles", capped)
                .say(
                        "command.cap.done",
                        batch.name(),
                        capped,
                        after.when(batch.cappedAt().orElseThrow()));
        if (!batch.notes().isEmpty()) {
            answer.line(batch.notes());
        }
    }

    @Override
    Map<String, String> options() {
        return Map.of(
                "cappedAt",
                "--at",
                "counts",
                "--bottles",
                "sugarGrams",
                "--sugar",
                "primedLitres",
                "--beer",
                "may",
                "--all-the-same");
    }
}
