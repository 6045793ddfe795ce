package undercroft.command;

import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import undercroft.catalogue.Listed;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;
import undercroft.report.Answer;
import undercroft.session.change.CellarChange;
import undercroft.session.change.TakeBottles;
import undercroft.wording.ShelfWords;

@Command
final class DrawCommand extends ChangeCommand {
    @Option(names = "--count", defaultValue = "1")
    private int count;

    @Option(names = "--fate", defaultValue = "opened")
    private String fate;

    @Option(names = "--carbonation")
    private String carbonation;

    @Option(names = "--note", defaultValue = "")
    private String note;

    DrawCommand(Console console) {
        super(console);
    }

    @Override
    CellarChange change(Cellar cellar, Batch batch) {
        Check.within("--count", count, 1, 10_000);
        Draw.Fate became = Listed.find(Draw.Fate.class, fate, "--fate");
        Optional<PerceivedCarbonation> found = Optional.ofNullable(carbonation)
                .map(word -> Listed.find(PerceivedCarbonation.class, word, "--carbonation"));
        if (found.isPresent() && became != Draw.Fate.OPENED) {
            throw new InvalidInput("--carbonation", "command.fault.not-opened");
        }
        return new TakeBottles(batch.id(), lot(batch).id(), new Draw(happened(cellar), count, became, note), found);
    }

    @Override
    void say(Answer answer, ShelfWords after, Batch batch) {
        int left = batch.leftAt(after.at());
        answer.put("count", count)
                .put("left", left)
                .say("command.draw.done", batch.name(), count, Listed.find(Draw.Fate.class, fate, "--fate"), left);
    }

    @Override
    Map<String, String> options() {
        return Map.of("at", "--at", "count", "--count", "draws", "--count");
    }
}
