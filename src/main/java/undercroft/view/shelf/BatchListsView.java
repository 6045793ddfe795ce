package undercroft.view.shelf;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.app.shelf.BatchPage;
import undercroft.cellar.Lot;
import undercroft.view.kit.Editors;
import undercroft.wording.Messages;

/** Readings, bottles, moves and notes below the plots; one list at a time opens from its name. */
final class BatchListsView extends VBox {
    private final Messages messages;
    private enum Sort {
        READINGS,
        BOTTLES,
        MOVES,
        NOTES
    }

    private final Editors editors;
    private final Consumer<BatchPage.Row> takeBack;
    private final StockView stock;
    private final ToggleGroup group = new ToggleGroup();
    private final VBox list = new VBox();
    private BatchPage page;
    private Sort open;

    BatchListsView(Messages messages, Editors editors, StockView stock, Consumer<BatchPage.Row> takeBack) {
        this.messages = messages;
        this.editors = editors;
        this.stock = stock;
        this.takeBack = takeBack;
        getStyleClass().add("batch-lists");
        list.getStyleClass().add("batch-list");
        list.setId("batch-list");
    }

    void show(BatchPage newPage) {
        page = newPage;
        HBox names = new HBox();
        names.getStyleClass().add("batch-list-names");
        int count = page.batch().batch().lots().stream().mapToInt(Lot::count).sum();
        names.getChildren()
                .addAll(
                        name(
                                Sort.READINGS,
                                messages.of("batch.tab.readings", page.readings().size())),
                        name(
                                Sort.BOTTLES,
                                messages.of("batch.tab.bottles", page.batch().bottlesLeft(), count)),
                        name(
                                Sort.MOVES,
                                messages.of("batch.tab.moves", page.moves().size())),
                        name(Sort.NOTES, messages.of("batch.tab.notes")));
        Label hint = faint(messages.of("plots.hint"));
        hint.setMaxWidth(Double.MAX_VALUE);
        hint.setAlignment(Pos.CENTER_RIGHT);
        HBox.setHgrow(hint, Priority.ALWAYS);
        names.setAlignment(Pos.CENTER_LEFT);
        names.getChildren().add(hint);
        getChildren().setAll(names, list);
        fill();
    }

    private ToggleButton name(Sort sort, String words) {
        ToggleButton name = new ToggleButton(words);
        name.setToggleGroup(group);
        name.setId("tab-" + sort.name().toLowerCase(Locale.ROOT));
        name.getStyleClass().add("list-name");
        name.setSelected(sort == open);
        name.setOnAction(event -> {
            open = name.isSelected() ? sort : null;
            fill();
        });
        return name;
    }

    private void fill() {
        list.getChildren().clear();
        list.setVisible(open != null);
        list.setManaged(open != null);
        if (open != null) {
            switch (open) {
                case READINGS -> rows(page.readings(), "batch.readings.none");
                case BOTTLES -> {
                    page.stock().ifPresent(shown -> list.getChildren().add(stock.of(shown)));
                    rows(page.draws(), "batch.draws.none");
                }
                case MOVES -> rows(page.moves(), "batch.draws.none");
                case NOTES -> notes();
            }
        }
    }

    private void rows(List<BatchPage.Row> rows, String noneKey) {
        if (rows.isEmpty()) {
            list.getChildren().add(faint(messages.of(noneKey)));
        }
        rows.forEach(row -> list.getChildren().add(row(row)));
    }

    private Node row(BatchPage.Row row) {
        Label when = faint(row.when());
        when.setMinWidth(170);
        Label what = new Label(row.what());
        Label note = faint(row.note());
        HBox.setHgrow(note, Priority.ALWAYS);
        note.setMaxWidth(Double.MAX_VALUE);
        HBox line = new HBox(12, when, what, note);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("list-row");
        if (row.reading().isPresent() || row.drawn().isPresent()) {
            String sentence = messages.of(row.reading().isPresent() ? "batch.reading.remove" : "batch.draw.remove");
            Button take = new Button("×");
            take.getStyleClass().addAll("quiet", "small");
            take.setAccessibleText(sentence);
            take.setTooltip(new Tooltip(sentence));
            take.setOnAction(event -> takeBack.accept(row));
            line.getChildren().add(take);
        }
        return line;
    }

    private void notes() {
        Label text = new Label(page.notes().isEmpty() ? messages.of("batch.notes.none") : page.notes());
        text.setWrapText(true);
        text.setMinHeight(USE_PREF_SIZE);
        Button change = new Button(messages.of("batch.action.notes"));
        change.setOnAction(event -> editors.editNotes(page.batch().batch()));
        list.getChildren().addAll(text, change);
    }

    private static Label faint(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("faint");
        return label;
    }
}
