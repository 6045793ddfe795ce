package undercroft.command;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.Listed;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.Serving;
import undercroft.outlook.serving.ServingPlan;
import undercroft.quantity.Temperature;
import undercroft.report.Answer;
import undercroft.session.change.CellarChange;
import undercroft.session.change.PromiseBottles;
import undercroft.wording.ServingWords;
import undercroft.wording.ShelfWords;

@Command
final class ServeCommand extends ChangeCommand {
    @Option(names = "--bottles", required = true)
    private int bottles;

    @Option(names = "--place")
    private String place;

    @Option(names = "--in", defaultValue = "fridge")
    private String coolingMedium;

    @Option(names = "--glass")
    private String glass;

    @Option(names = "--note", defaultValue = "")
    private String note;

    private String servingId;

    ServeCommand(Console console) {
        super(console);
    }

    @Override
    CellarChange change(Cellar cellar, Batch batch) {
        Optional<String> chilled = Optional.ofNullable(place)
                .map(id -> Listed.find(cellar.places(), id, "--place"))
                .map(Place::id);
        OptionalDouble wanted = glass == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Typed.read("--glass", glass, Temperature::parse).celsius());
        Serving promised = new Serving(
                PromiseBottles.freeId(cellar, batch.id()),
                batch.id(),
                bottles,
                toCome(cellar),
                chilled,
                Listed.find(CoolingMedium.class, coolingMedium, "--in"),
                wanted,
                note);
        servingId = promised.id();
        return new PromiseBottles(promised, console().clock().instant(), Optional.of(outlook(cellar, batch)));
    }

    @Override
    void say(Answer answer, ShelfWords after, Batch batch) {
        ServingPlan plan = after.outlook().servings().stream()
                .filter(each -> each.serving().id().equals(servingId))
                .findFirst()
                .orElseThrow();
        ServingWords said = new ServingWords(after);
        answer.put("serving", servingId)
                .put("bottles", bottles)
                .put("at", plan.serving().at().toString())
                .put("chillFrom", plan.chillFrom().map(Instant::toString).orElse(""))
                .say(
                        "command.serve.done",
                        batch.name(),
                        bottles,
                        after.when(plan.serving().at()));
        plan.chillFrom().ifPresent(from -> answer.say("command.serve.chill", after.when(from)));
        answer.line(after.format().messages().sentence(said.why(plan)));
        plan.concerns()
                .forEach(concern -> answer.line(after.format().messages().sentence(said.concern(plan, concern))));
    }

    @Override
    Map<String, String> options() {
        return Map.of(
                "at", "--at", "place", "--place", "bottles", "--bottles", "glassCelsius", "--glass", "batch", "batch");
    }
}
