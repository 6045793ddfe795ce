package undercroft.command;

import java.time.Instant;
import java.util.Map;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.Listed;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Origin;
import undercroft.cellar.Reading;
import undercroft.quantity.Gravity;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Pressure;
import undercroft.report.Answer;
import undercroft.session.change.CellarChange;
import undercroft.session.change.NoteReading;
import undercroft.wording.ShelfWords;

@Command
final class ReadCommand extends ChangeCommand {
    @ArgGroup(multiplicity = "1")
    private Found found = new Found();

    @Option(names = "--instrument", defaultValue = "gauge")
    private String instrument;

    @Option(names = "--bottle", defaultValue = "")
    private String bottle;

    /** One thing that was found out. */
    private static final class Found {
        @Option(names = "--gauge", required = true, descriptionKey = "gauge")
        private String gauge;

        @Option(names = "--squeeze", required = true, descriptionKey = "squeeze")
        private String squeeze;

        @Option(names = "--opened", required = true, descriptionKey = "opened")
        private String opened;

        @Option(names = "--gravity", required = true, descriptionKey = "gravity")
        private String gravity;
    }

    ReadCommand(Console console) {
        super(console);
    }

    @Override
    CellarChange change(Cellar cellar, Batch batch) {
        Instant when = happened(cellar);
        if (batch.cappedAt().isEmpty()) {
            throw new InvalidInput("batch", "command.fault.not-capped", batch.name());
        }
        return new NoteReading(batch.id(), reading(batch, when));
    }

    private Reading reading(Batch batch, Instant when) {
        if (found.gravity != null) {
            double specific =
                    Typed.read("--gravity", found.gravity, Gravity::parse).specific();
            return new Reading.Density(when, specific, new Origin(bottle, "", ""));
        }
        String lotId = lot(batch).id();
        if (found.gauge != null) {
            double bar = Typed.read("--gauge", found.gauge, Pressure::parse).bar();
            return new Reading.Gauge(when, lotId, bar, new Origin(bottle, instrument, ""));
        }
        if (found.squeeze != null) {
            return new Reading.Squeeze(when, lotId, Listed.find(BottleFeel.class, found.squeeze, "--squeeze"));
        }
        return new Reading.Opened(when, lotId, Listed.find(PerceivedCarbonation.class, found.opened, "--opened"));
    }

    @Override
    void say(Answer answer, ShelfWords after, Batch batch) {
        int readings = batch.readings().size();
        answer.put("readings", readings).say("command.read.done", batch.name(), readings);
    }

    @Override
    Map<String, String> options() {
        return Map.of(
                "at", "--at", "gaugeBar", "--gauge", "specificGravity", "--gravity", "instrument", "--instrument");
    }
}
