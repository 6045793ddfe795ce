package undercroft.command;

import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import undercroft.catalogue.Cover;
import undercroft.catalogue.Listed;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.quantity.Check;
import undercroft.report.Answer;
import undercroft.session.change.CellarChange;
import undercroft.session.change.MoveBottles;
import undercroft.wording.ShelfWords;

@Command
final class MoveCommand extends ChangeCommand {
    @Option(names = "--to", required = true)
    private String to;

    @Option(names = "--count")
    private Integer count;

    @Option(names = "--cover")
    private String cover;

    private int moved;
    private Place place;

    MoveCommand(Console console) {
        super(console);
    }

    @Override
    CellarChange change(Cellar cellar, Batch batch) {
        Lot lot = lot(batch);
        place = Listed.find(cellar.places(), to, "--to");
        moved = count == null ? lot.left() : Check.within("--count", count, 1, 10_000);
        Cover under = cover == null
                ? lot.stays().get(lot.stays().size() - 1).cover()
                : Listed.find(Cover.class, cover, "--cover");
        return new MoveBottles(batch.id(), lot.id(), moved, place.id(), happened(cellar), under);
    }

    @Override
    void say(Answer answer, ShelfWords after, Batch batch) {
        answer.put("count", moved).put("place", place.id()).say("command.move.done", batch.name(), moved, place.name());
    }

    @Override
    Map<String, String> options() {
        return Map.of("at", "--at", "place", "--to", "count", "--count");
    }
}
