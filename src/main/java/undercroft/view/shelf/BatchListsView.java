package undercroft.view.shelf;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.app.shelf.BatchPage;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.outlook.lot.LotOutlook;
import undercroft.view.kit.Editors;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Messages;

/** Readings, bottles, moves and notes of a batch, one list at a time, each with the button that adds to it. */
final class BatchListsView extends VBox {
    private final Messages messages;

    private enum Sort {
        READINGS("tab-readings"),
        BOTTLES("tab-bottles"),
        MOVES("tab-moves"),
        NOTES("tab-notes");

        private final String id;

        Sort(String id) {
            this.id = id;
        }
    }

    private final Editors editors;
    private final Consumer<BatchPage.Row> takeBack;
    private final StockView stock;
    private final HBox names = new HBox();
    private final VBox list = new VBox();
    private final HBox foot = new HBox();
    private BatchPage page;
    private Sort open = Sort.READINGS;

    BatchListsView(Messages messages, Editors editors, StockView stock, Consumer<BatchPage.Row> takeBack) {
        this.messages = messages;
        this.editors = editors;
        this.stock = stock;
        this.takeBack = takeBack;
        getStyleClass().addAll("batch-lists", "card");
        names.getStyleClass().add("batch-list-names");
        names.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        list.getStyleClass().add("batch-list");
        list.setId("batch-list");
        list.setAccessibleRole(AccessibleRole.LIST_VIEW);
        list.setAccessibleText(messages.of("batch.lists.sentence"));
        foot.getStyleClass().add("batch-list-foot");
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().setAll(names, scroll, foot);
    }

    void show(BatchPage newPage) {
        page = newPage;
        int count = page.batch().batch().lots().stream().mapToInt(Lot::count).sum();
        ToggleGroup group = new ToggleGroup();
        names.getChildren()
                .setAll(
                        name(
                                group,
                                Sort.READINGS,
                                messages.of(
                                        "batch.tab.readings", page.readings().size()),
                                messages.of(
                                        "batch.tab.readings", page.readings().size())),
                        name(
                                group,
                                Sort.BOTTLES,
                                messages.of("batch.tab.bottles", page.batch().bottlesLeft()),
                                messages.of("batch.tab.bottles-of", page.batch().bottlesLeft(), count)),
                        name(
                                group,
                                Sort.MOVES,
                                messages.of("batch.tab.moves", page.moves().size()),
                                messages.of("batch.tab.moves", page.moves().size())),
                        name(group, Sort.NOTES, messages.of("batch.tab.notes"), messages.of("batch.tab.notes")));
        fill();
    }

    private ToggleButton name(ToggleGroup group, Sort sort, String words, String sentence) {
        ToggleButton name = new ToggleButton(words);
        name.setToggleGroup(group);
        name.setId(sort.id);
        name.setMinWidth(USE_PREF_SIZE);
        name.getStyleClass().add("list-name");
        name.setAccessibleRole(AccessibleRole.TAB_ITEM);
        name.setAccessibleText(sentence);
        name.setTooltip(new Tooltip(sentence));
        name.setSelected(sort == open);
        name.setOnAction(event -> {
            name.setSelected(true);
            open = sort;
            fill();
        });
        return name;
    }

    /** The arrows go from list to list. */
    private void key(KeyEvent event) {
        int step = Shortcut.LIST_AFTER.matches(event) ? 1 : Shortcut.LIST_BEFORE.matches(event) ? -1 : 0;
        int at = List.of(Sort.values()).indexOf(open) + step;
        if (step != 0 && at >= 0 && at < names.getChildren().size()) {
            ToggleButton next = (ToggleButton) names.getChildren().get(at);
            next.requestFocus();
            next.fire();
        }
        if (step != 0) {
            event.consume();
        }
    }

    private void fill() {
        list.getChildren().clear();
        foot.getChildren().clear();
        Batch batch = page.batch().batch();
        switch (open) {
            case READINGS -> {
                rows(page.readings(), "batch.readings.none");
                foot("batch.lists.read", lot -> editors.read(batch, lot));
            }
            case BOTTLES -> {
                page.stock().ifPresent(shown -> list.getChildren().add(stock.of(shown)));
                rows(page.draws(), "batch.draws.none");
                foot("batch.lists.draw", lot -> editors.draw(batch, lot));
            }
            case MOVES -> {
                rows(page.moves(), "batch.moves.none");
                foot("batch.lists.move", lot -> editors.move(batch, lot));
            }
            case NOTES -> {
                list.getChildren()
                        .add(wrapped(page.notes().isEmpty() ? messages.of("batch.notes.none") : page.notes()));
                foot("batch.action.notes", lot -> editors.editNotes(batch));
            }
        }
    }

    private void foot(String key, Consumer<Lot> act) {
        Button button = new Button(messages.of(key));
        button.setId("list-add");
        button.setOnAction(event -> page.lot().map(LotOutlook::lot).ifPresent(act));
        foot.getChildren().add(button);
    }

    private void rows(List<BatchPage.Row> rows, String noneKey) {
        if (rows.isEmpty()) {
            Label none = wrapped(messages.of(noneKey));
            none.getStyleClass().add("faint");
            list.getChildren().add(none);
        }
        rows.forEach(row -> list.getChildren().add(row(row)));
    }

    private Node row(BatchPage.Row row) {
        Label what = wrapped(row.what());
        what.getStyleClass().add("list-what");
        Label when = faint(row.when());
        VBox said = new VBox(when, what);
        if (!row.note().isEmpty()) {
            said.getChildren().add(faint(row.note()));
        }
        HBox.setHgrow(said, Priority.ALWAYS);
        HBox line = new HBox(8, said);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("list-row");
        line.setAccessibleRole(AccessibleRole.LIST_ITEM);
        line.setAccessibleText(messages.of("batch.list.row-sentence", row.when(), row.what(), row.note()));
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

    private static Label wrapped(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    private static Label faint(String words) {
        Label label = wrapped(words);
        label.getStyleClass().add("faint");
        return label;
    }
}
