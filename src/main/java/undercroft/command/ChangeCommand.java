package undercroft.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.quantity.InvalidInput;
import undercroft.report.Answer;
import undercroft.session.FolderRepository;
import undercroft.session.IncomingFiles;
import undercroft.session.change.CellarChange;
import undercroft.store.CellarStore;
import undercroft.store.LoggedTemperatures;
import undercroft.wording.Headlines;
import undercroft.wording.ShelfWords;

/** A command that does to a batch what a form of the window does, and says what that means for it. */
abstract class ChangeCommand extends AnswerCommand {
    @Parameters(index = "0", paramLabel = "folder", descriptionKey = "folder")
    private Path folder;

    @Parameters(index = "1", paramLabel = "batch", descriptionKey = "batch")
    private String batch;

    @Option(names = "--lot", descriptionKey = "lot")
    private String lot;

    @Option(names = "--at", descriptionKey = "at")
    private String at;

    ChangeCommand(Console console) {
        super(console);
    }

    /** What is to be done to the batch. */
    abstract CellarChange change(Cellar cellar, Batch batch);

    /** Says what was done; {@code after} shows the batch, alone in its cellar, as it is now. */
    abstract void say(Answer answer, ShelfWords after, Batch batch);

    @Override
    final Answer answer() {
        Cellar known = CellarStore.read(folder);
        batch(known);
        try (CellarStore store = CellarStore.open(folder, console().clock(), "undercroft")) {
            IncomingFiles.takeInAlone(store);
            Cellar before = store.cellar();
            Batch changed = batch(before);
            Cellar after = done(before, changed);
            new FolderRepository(store).save(after);
            return told(before, after, changed);
        }
    }

    private Cellar done(Cellar before, Batch changed) {
        try {
            return change(before, changed).applyTo(before);
        } catch (InvalidInput fault) {
            String option =
                    options().get(fault.where().replaceAll("\\[\\d+]$", "").replaceAll(".*\\.", ""));
            throw option == null ? fault : fault.at(option);
        }
    }

    /** The options by the names that faults of a cellar give their places. */
    abstract Map<String, String> options();

    /** What was done and what it means: the batch's headline, before it too where that was another one. */
    private Answer told(Cellar before, Cellar after, Batch changed) {
        ShelfWords now = shelf(after, changed.id());
        Answer answer = reply().put("batch", changed.id());
        say(answer, now, now.outlook().batches().get(0).batch());
        String was = changed.cappedAt().isEmpty() ? "" : headline(shelf(before, changed.id()));
        String is = headline(now);
        if (!was.isEmpty() && !was.equals(is)) {
            answer.say("command.change.before", was);
        }
        return answer.say("command.change.now", is).estimate();
    }

    private static String headline(ShelfWords shelf) {
        return new Headlines(shelf).of(shelf.outlook().batches().get(0));
    }

    /** A batch alone in its cellar, as nothing else is asked for. */
    private ShelfWords shelf(Cellar cellar, String batchId) {
        return ShelfWords.of(outlook(cellar, cellar.batch(batchId)), console().messages());
    }

    final CellarOutlook outlook(Cellar cellar, Batch batch) {
        Cellar alone = cellar.withServings(cellar.servings().stream()
                        .filter(serving -> serving.batchId().equals(batch.id()))
                        .toList())
                .withBatches(List.of(batch));
        LoggedTemperatures logged = CellarStore.temperatures(folder, alone);
        return Outlooks.of(alone, logged.celsius(), console().clock().instant()).telling(logged.faults());
    }

    private Batch batch(Cellar cellar) {
        return cellar.batches().stream()
                .filter(each -> each.id().equals(batch))
                .findFirst()
                .orElseGet(() -> named(cellar));
    }

    private Batch named(Cellar cellar) {
        List<Batch> named = cellar.batches().stream()
                .filter(each -> each.name().equalsIgnoreCase(batch.strip()))
                .toList();
        if (named.size() == 1) {
            return named.get(0);
        }
        List<Batch> meant = named.isEmpty() ? cellar.batches() : named;
        if (meant.isEmpty()) {
            throw new InvalidInput("batch", "command.fault.no-batches");
        }
        throw new InvalidInput(
                "batch",
                named.isEmpty() ? "command.fault.no-batch" : "command.fault.several-batches",
                batch,
                String.join(", ", meant.stream().map(Batch::id).toList()));
    }

    /** The lot that was named, or the only one that has bottles. */
    final Lot lot(Batch of) {
        if (of.cappedAt().isEmpty()) {
            throw new InvalidInput("batch", "command.fault.not-capped", of.name());
        }
        if (lot != null) {
            return of.lots().stream()
                    .filter(each -> each.id().equals(lot))
                    .findFirst()
                    .orElseThrow(() -> new InvalidInput("--lot", "command.fault.no-lot", lot, lots(of.lots())));
        }
        List<Lot> full = of.lots().stream().filter(each -> each.left() > 0).toList();
        if (full.isEmpty()) {
            throw new InvalidInput("batch", "command.fault.no-bottles", of.name());
        }
        if (full.size() > 1) {
            throw new InvalidInput("--lot", "command.fault.say-lot", lots(full));
        }
        return full.get(0);
    }

    private static String lots(List<Lot> lots) {
        return String.join(", ", lots.stream().map(Lot::id).toList());
    }

    /** When it happened: what was said, or now. What happened cannot lie ahead. */
    final Instant happened(Cellar cellar) {
        Instant now = console().clock().instant();
        Instant when = at == null ? now : Typed.instant("--at", at, cellar.zone(), now);
        if (when.isAfter(now)) {
            throw new InvalidInput("--at", "form.fault.to-come");
        }
        return when;
    }

    /** When it is to be. */
    final Instant toCome(Cellar cellar) {
        if (at == null) {
            throw new InvalidInput("--at", "command.fault.say-when");
        }
        return Typed.instant("--at", at, cellar.zone(), console().clock().instant());
    }
}
