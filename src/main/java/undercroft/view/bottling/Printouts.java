package undercroft.view.bottling;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.stage.Window;
import undercroft.app.bottling.DayPrintouts;
import undercroft.view.kit.LinePrinter;
import undercroft.view.kit.WindowContext;

/** Puts the papers of a day into files or on a printer, and says what became of them. */
final class Printouts {
    private final WindowContext window;
    private final Picker picker;
    private final StringProperty answer = new SimpleStringProperty(this, "answer", "");

    /** Asks where a file shall go; empty when the person thinks better of it. */
    interface Picker {
        Optional<Path> pick(Window owner, String suggestedName);
    }

    Printouts(WindowContext window, Picker picker) {
        this.window = window;
        this.picker = picker;
    }

    /** One quiet line that says what was written; gone while nothing was. */
    Label answer() {
        Label label = Labels.of("", "faint");
        label.textProperty().bind(answer);
        label.visibleProperty().bind(answer.isNotEmpty());
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }

    void save(Node from, String suggestedName, Supplier<String> page) {
        save(from, suggestedName, page, html -> html, saved -> {});
    }

    /** The paper is made and written in the background. */
    <T> void save(Node from, String suggestedName, Supplier<T> paper, Function<T, String> page, Consumer<T> whenSaved) {
        picker.pick(from.getScene().getWindow(), suggestedName)
                .ifPresent(file -> window.tasks()
                        .run(
                                () -> {
                                    T made = paper.get();
                                    DayPrintouts.write(file, page.apply(made));
                                    return made;
                                },
                                made -> {
                                    whenSaved.accept(made);
                                    answer.set(window.messages().of("bottling.papers.saved", file));
                                },
                                window.faults()::show));
    }

    void print(Node from, DayPrintouts printouts) {
        answer.set(LinePrinter.print(window.messages(), from.getScene().getWindow(), printouts.lines()));
    }
}
