package undercroft.view.shelf;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import undercroft.app.shelf.ShelfViewModel;
import undercroft.view.kit.WindowContext;
import undercroft.wording.Messages;

/** What stands in place of crates where there are none to show. */
final class EmptyShelf {
    static final double HEIGHT = 190;

    private EmptyShelf() {}

    /** A cellar without a batch: what to do first. */
    static VBox of(WindowContext context) {
        Button place = new Button(context.messages().of("shelf.empty.add-place"));
        place.setOnAction(event -> context.editors().addPlace());
        Button batch = new Button(context.messages().of("shelf.empty.add-batch"));
        place.setId("empty-add-place");
        batch.setId("empty-add-batch");
        batch.setOnAction(event -> context.editors().addBatch());
        boolean hasPlace = !context.workspace().getCellar().places().isEmpty();
        (hasPlace ? batch : place).getStyleClass().add("accent");
        batch.setDisable(!hasPlace);
        VBox note = note(
                context.messages().of("shelf.empty.title"),
                context.messages().of("shelf.empty.text"),
                new HBox(8, place, batch));
        note.setId("empty-shelf");
        return note;
    }

    /** A search or a choice that finds nothing. */
    static VBox noHit(Messages messages, ShelfViewModel model) {
        String searched = model.searchProperty().get().trim();
        Button clear = new Button(messages.of("shelf.none.clear"));
        clear.setId("find-clear");
        clear.setOnAction(event -> {
            model.searchProperty().set("");
            model.showProperty().set(ShelfViewModel.Show.ALL);
        });
        String title =
                searched.isEmpty() ? messages.of("shelf.none.title") : messages.of("shelf.none.searched", searched);
        VBox note = note(title, messages.of("shelf.none.text"), new HBox(clear));
        note.setId("no-hit");
        return note;
    }

    private static VBox note(String title, String text, HBox buttons) {
        Label first = new Label(title);
        first.getStyleClass().add("empty-title");
        Label second = new Label(text);
        second.getStyleClass().add("empty-text");
        second.setWrapText(true);
        VBox note = new VBox(8, first, second, buttons);
        note.getStyleClass().add("empty-note");
        return note;
    }
}
